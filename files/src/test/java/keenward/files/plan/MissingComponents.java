package keenward.files.plan;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import keenward.core.plan.Fact;
import keenward.core.plan.SitePlan;

/** Finds components of the plan's records that no record of a plan fills. */
final class MissingComponents {

  private final Map<String, Boolean> filled = new TreeMap<>();

  private MissingComponents() {}

  /**
   * Names such as {@code Zone.note} that are missing, unknown or empty in every record of their
   * class.
   */
  static List<String> of(SitePlan plan) {
    MissingComponents components = new MissingComponents();
    components.visit(plan);
    List<String> missing = new ArrayList<>();
    components.filled.forEach((name, isFilled) -> {
      if (!isFilled) {
        missing.add(name);
      }
    });
    return missing;
  }

  private void visit(Object value) {
    switch (value) {
      case Fact.Given<?>(Object given) -> visit(given);
      case Collection<?> items -> items.forEach(this::visit);
      case Map<?, ?> map -> map.values().forEach(this::visit);
      case Record each when each.getClass().getPackage().equals(SitePlan.class.getPackage()) ->
          components(each);
      default -> {}
    }
  }

  private void components(Record each) {
    for (RecordComponent component : each.getClass().getRecordComponents()) {
      Object value = value(each, component);
      boolean isFilled =
          switch (value) {
            case Fact<?> fact -> fact.isGiven();
            case Collection<?> items -> !items.isEmpty();
            case Map<?, ?> map -> !map.isEmpty();
            default -> true;
          };
      filled.merge(
          each.getClass().getSimpleName() + "." + component.getName(),
          isFilled,
          Boolean::logicalOr);
      visit(value);
    }
  }

  private static Object value(Record each, RecordComponent component) {
    try {
      return component.getAccessor().invoke(each);
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(component.getName(), e);
    }
  }
}
