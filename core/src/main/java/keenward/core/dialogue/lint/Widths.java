package keenward.core.dialogue.lint;

import java.util.ArrayList;
import java.util.List;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Target;
import keenward.core.dialogue.description.Template;

/** The widest that anything on a display can get, in characters. */
final class Widths {
  private final PanelDescription description;

  Widths(PanelDescription description) {
    this.description = description;
  }

  int of(Screen screen, Template template) {
    int width = 0;
    for (Template.Part part : template.parts()) {
      width += of(screen, part);
    }
    return width;
  }

  private int of(Screen screen, Template.Part part) {
    return switch (part) {
      case Template.Literal literal -> literal.text().length();
      case Template.TypedText typed -> {
        int otherwise = typed.otherwise().map(field -> of(screen, field)).orElse(0);
        yield Math.max(otherwise, ofTyped(screen));
      }
      case Template.FieldText field -> Math.max(field.width(), of(screen, field.field()));
      case Template.RecordNumber number -> Math.max(number.width(), ofRecords(number.record()));
      case Template.UnderCursor cursor -> ofCursor(screen);
      case Template.OtherRecord other -> {
        int widest = 1;
        for (RecordKind kind : description.records()) {
          widest = Math.max(widest, ofRecords(kind.name()));
        }
        yield widest;
      }
      case Template.LocationNumber number -> Math.max(number.width(), ofLocations());
    };
  }

  private int ofRecords(String record) {
    return description
        .findRecord(record)
        .map(kind -> Integer.toString(kind.last()).length())
        .orElse(1);
  }

  private int ofLocations() {
    int widest = 1;
    for (Location location : description.locations()) {
      widest = Math.max(widest, Integer.toString(location.number()).length());
    }
    return widest;
  }

  private int of(Screen screen, FieldReference reference) {
    int widest = 0;
    for (Field field : fields(screen, reference)) {
      widest = Math.max(widest, of(field.type()));
    }
    return widest;
  }

  /** The fields that a reference may mean on a screen. */
  List<Field> fields(Screen screen, FieldReference reference) {
    return switch (reference) {
      case FieldReference.Named named ->
          description.findField(named.field()).map(List::of).orElse(List.of());
      case FieldReference.AtLocation at -> {
        List<Field> fields = new ArrayList<>();
        for (Location location : description.locations()) {
          if (location.screen().equals(screen.name())) {
            description.findField(location.field()).ifPresent(fields::add);
          }
        }
        yield fields.stream().distinct().toList();
      }
    };
  }

  /** The widest text that a field of this type is shown as. */
  static int of(FieldType type) {
    return switch (type) {
      case FieldType.WholeNumber number -> {
        int widest =
            Math.max(
                number.width(),
                Math.max(
                    Integer.toString(number.most()).length(),
                    Integer.toString(number.least()).length()));
        for (FieldType.Special special : number.specials()) {
          widest = Math.max(widest, special.shown().length());
        }
        yield widest;
      }
      case FieldType.Choice choice -> {
        int widest = 1;
        for (FieldType.Option option : choice.options()) {
          widest = Math.max(widest, option.shown().length());
        }
        yield widest;
      }
      case FieldType.OptionSet set -> {
        int width = -1;
        for (FieldType.Option option : set.options()) {
          width += option.shown().length() + 1;
        }
        yield Math.max(1, width);
      }
      case FieldType.Digits digits -> digits.most();
      case FieldType.FreeText text -> text.length();
      case FieldType.WordSequence words -> widest(words, words.most());
      case FieldType.Serial serial -> serial.most();
      case FieldType.Code code -> code.most();
    };
  }

  private static int widest(FieldType.WordSequence type, int count) {
    int longest = 0;
    for (String word : type.words()) {
      longest = Math.max(longest, word.length());
    }
    return Math.max(1, (longest + 1) * count - 1);
  }

  private int ofTyped(Screen screen) {
    if (screen.entry().isEmpty()) {
      return 0;
    }
    return switch (screen.entry().get()) {
      case Entry.Typed typed -> typed.most();
      case Entry.Coded coded -> ofCode(screen, coded.target());
      case Entry.Lettered lettered -> of(screen, lettered.field());
      case Entry.WordByNumber words -> of(screen, words.field()) + words.digits();
      case Entry.WordByScroll words -> of(screen, words.field());
      default -> 0;
    };
  }

  private int ofCode(Screen screen, Target target) {
    return switch (target) {
      case Target.ToField to -> of(screen, to.field());
      case Target.Repeat to -> of(screen, to.field());
      case Target.Check to -> of(screen, to.field());
      default -> 1;
    };
  }

  private int ofCursor(Screen screen) {
    if (screen.entry().isEmpty()) {
      return 1;
    }
    return switch (screen.entry().get()) {
      case Entry.Menu menu -> {
        int widest = 1;
        for (Entry.Item item : menu.items()) {
          widest = Math.max(widest, item.shown().length());
        }
        yield widest;
      }
      case Entry.Scroll scroll -> of(screen, scroll.field());
      case Entry.ToggleByCursor toggle -> ofOption(screen, toggle.field());
      case Entry.WordByScroll words -> {
        int widest = 1;
        for (Field field : fields(screen, words.field())) {
          if (field.type() instanceof FieldType.WordSequence type) {
            widest = Math.max(widest, widest(type, 1));
          }
        }
        yield widest;
      }
      default -> 1;
    };
  }

  private int ofOption(Screen screen, FieldReference reference) {
    int widest = 1;
    for (Field field : fields(screen, reference)) {
      if (field.type() instanceof FieldType.OptionSet set) {
        for (FieldType.Option option : set.options()) {
          widest = Math.max(widest, option.shown().length());
        }
      }
    }
    return widest;
  }
}
