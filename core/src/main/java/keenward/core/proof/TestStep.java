package keenward.core.proof;

import java.util.List;
import java.util.Optional;

/**
 * One thing to do and what must be seen.
 *
 * @param number place in the list, from 1
 * @param phase when it belongs
 * @param subject what it tests
 * @param partition number of the partition it concerns; 0 for the system as a whole
 * @param place where it is done, when known
 * @param precondition state of the system before it; empty for none
 * @param action what to do
 * @param keypadShows what the keypad must show; empty when nothing is to be seen there
 * @param time time to measure
 * @param signals what the centre must receive, in order
 * @param cautions cautions to read first
 */
public record TestStep(
    int number,
    Phase phase,
    TestSubject subject,
    int partition,
    Optional<Place> place,
    String precondition,
    String action,
    String keypadShows,
    Optional<MeasuredTime> time,
    List<ExpectedSignal> signals,
    List<Caution> cautions) {

  /** Copies the lists. */
  public TestStep {
    signals = List.copyOf(signals);
    cautions = List.copyOf(cautions);
  }

  TestStep numbered(int position) {
    return new TestStep(
        position,
        phase,
        subject,
        partition,
        place,
        precondition,
        action,
        keypadShows,
        time,
        signals,
        cautions);
  }

  /** A step that is yet without its number and its optional parts. */
  static TestStep of(Phase phase, TestSubject subject, String action) {
    return new TestStep(
        0,
        phase,
        subject,
        0,
        Optional.empty(),
        "",
        action,
        "",
        Optional.empty(),
        List.of(),
        List.of());
  }

  TestStep in(int partitionNumber) {
    return new TestStep(
        number,
        phase,
        subject,
        partitionNumber,
        place,
        precondition,
        action,
        keypadShows,
        time,
        signals,
        cautions);
  }

  TestStep at(Optional<Place> where) {
    return new TestStep(
        number,
        phase,
        subject,
        partition,
        where,
        precondition,
        action,
        keypadShows,
        time,
        signals,
        cautions);
  }

  TestStep given(String state) {
    return new TestStep(
        number,
        phase,
        subject,
        partition,
        place,
        state,
        action,
        keypadShows,
        time,
        signals,
        cautions);
  }

  TestStep shows(String text) {
    return new TestStep(
        number,
        phase,
        subject,
        partition,
        place,
        precondition,
        action,
        text,
        time,
        signals,
        cautions);
  }

  TestStep measures(MeasuredTime measured) {
    return new TestStep(
        number,
        phase,
        subject,
        partition,
        place,
        precondition,
        action,
        keypadShows,
        Optional.of(measured),
        signals,
        cautions);
  }

  TestStep signals(List<ExpectedSignal> expected) {
    return new TestStep(
        number,
        phase,
        subject,
        partition,
        place,
        precondition,
        action,
        keypadShows,
        time,
        expected,
        cautions);
  }

  TestStep cautions(List<Caution> read) {
    return new TestStep(
        number,
        phase,
        subject,
        partition,
        place,
        precondition,
        action,
        keypadShows,
        time,
        signals,
        read);
  }
}
