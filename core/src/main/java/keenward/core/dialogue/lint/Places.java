package keenward.core.dialogue.lint;

import keenward.core.dialogue.description.Field;

/** Places in a description file, as JSON Pointers. */
final class Places {
  private Places() {}

  static String of(String... steps) {
    StringBuilder pointer = new StringBuilder();
    for (String step : steps) {
      pointer.append('/').append(step.replace("~", "~0").replace("/", "~1"));
    }
    return pointer.toString();
  }

  static String screen(String screen) {
    return of("screens", screen);
  }

  static String field(Field field) {
    return of("memory", field.byRecord() ? field.record() : "panel", field.localName());
  }
}
