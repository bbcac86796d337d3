package keenward.core.dialogue.planned;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.PlanSource;
import keenward.core.dialogue.description.Value;
import keenward.core.plan.Setting;
import keenward.core.quantities.Span;

/** What a new panel does where nobody has set anything, in the terms of the plan. */
public final class PanelDefaults {
  private PanelDefaults() {}

  /**
   * The panel's own default of each system-wide setting that one of its fields takes; times in
   * milliseconds.
   */
  public static Map<Setting, Long> of(PanelDescription description) {
    Map<Setting, Long> defaults = new EnumMap<>(Setting.class);
    for (Field field : description.fields()) {
      if (field.from().isPresent()
          && field.from().get() instanceof PlanSource.OneFact one
          && field.initial().known()) {
        for (Setting setting : Setting.values()) {
          if (path(setting).equals(one.path())) {
            number(setting, field, one).ifPresent(value -> defaults.putIfAbsent(setting, value));
          }
        }
      }
    }
    return defaults;
  }

  private static String path(Setting setting) {
    return setting == Setting.ENTRY_DELAY
        ? "entry delay.time"
        : "panel." + setting.word().replace(" / ", ".");
  }

  private static Optional<Long> number(Setting setting, Field field, PlanSource.OneFact source) {
    if (field.initial() instanceof Value.Whole whole
        && field.type() instanceof FieldType.WholeNumber type) {
      long unit = Math.max(1, Conversion.unit(type.unit()));
      return Optional.of(whole.number() * unit * type.scale());
    }
    if (field.initial() instanceof Value.Word word) {
      return switch (setting.kind()) {
        case FLAG -> Optional.of(planWord(source, word.word()).equals("yes") ? 1L : 0L);
        case SPAN ->
            Optional.ofNullable(Span.parse(planWord(source, word.word())).value())
                .map(Span::milliseconds);
        case COUNT -> Optional.empty();
      };
    }
    return Optional.empty();
  }

  private static String planWord(PlanSource.OneFact source, String panelWord) {
    for (Map.Entry<String, String> entry : source.words().entrySet()) {
      if (entry.getValue().equals(panelWord)) {
        return entry.getKey();
      }
    }
    return panelWord;
  }
}
