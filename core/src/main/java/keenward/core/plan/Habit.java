package keenward.core.plan;

import java.util.List;
import keenward.core.quantities.Span;

/**
 * Something a person regularly does to the system.
 *
 * @param name name, unique for the person
 * @param action what they do
 * @param days on which days; empty means every day
 * @param time time of day, hours and minutes
 * @param through name of the opening by which they come or leave
 * @param keypad name of the keypad they use
 * @param keypadTime how long they stand at the keypad
 */
public record Habit(
    String name,
    HabitAction action,
    List<Weekday> days,
    Fact<TimeOfDay> time,
    Fact<String> through,
    Fact<String> keypad,
    Fact<Span> keypadTime) {

  public Habit {
    days = List.copyOf(days);
  }
}
