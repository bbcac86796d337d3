package keenward.files.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Destination;
import keenward.core.dialogue.description.Effect;
import keenward.files.panel.PanelDescriptionShape.BranchText;
import keenward.files.shape.Fields;
import keenward.files.yaml.YamlPointer;

/** Turns what a file says about where keys lead into actions. */
final class ActionBinder {
  private final Vocabulary vocabulary;
  private final ConditionText conditions;
  private final EffectText effects;
  private final boolean hasLocations;
  private final Faults faults;

  ActionBinder(Vocabulary vocabulary, Faults faults) {
    this.vocabulary = vocabulary;
    this.faults = faults;
    this.conditions = new ConditionText(vocabulary, faults);
    this.effects = new EffectText(vocabulary, faults);
    this.hasLocations = faults.hasItems("/locations");
  }

  /** The action; empty where a fault was reported. */
  Optional<Action> bind(String pointer, List<BranchText> texts) {
    List<Action.Branch> branches = new ArrayList<>();
    for (int index = 0; index < texts.size(); index++) {
      String place = faults.isList(pointer) ? YamlPointer.child(pointer, index) : pointer;
      branch(place, texts.get(index)).ifPresent(branches::add);
    }
    return branches.size() == texts.size() ? Optional.of(new Action(branches)) : Optional.empty();
  }

  private Optional<Action.Branch> branch(String pointer, BranchText text) {
    if (text.fields().isEmpty()) {
      return destination(pointer, text.destination())
          .map(to -> new Action.Branch(Condition.ALWAYS, List.of(), to));
    }
    Fields fields = text.fields().get();
    Optional<Condition> condition =
        fields
            .find(PanelDescriptionShape.BRANCH_WHEN)
            .map(when -> conditions.parse(pointer + "/when", when))
            .orElse(Optional.of(Condition.ALWAYS));
    Optional<List<Effect>> done =
        effects(pointer + "/do", fields.list(PanelDescriptionShape.BRANCH_DO));
    Optional<Destination> destination =
        fields
            .find(PanelDescriptionShape.BRANCH_GO)
            .flatMap(go -> destination(pointer + "/go", go));
    return condition.isPresent() && done.isPresent() && destination.isPresent()
        ? Optional.of(new Action.Branch(condition.get(), done.get(), destination.get()))
        : Optional.empty();
  }

  /** Effects; empty where a fault was reported. */
  Optional<List<Effect>> effects(String pointer, List<String> texts) {
    List<Effect> parsed = new ArrayList<>();
    for (int index = 0; index < texts.size(); index++) {
      String place = faults.isList(pointer) ? YamlPointer.child(pointer, index) : pointer;
      effects.parse(place, texts.get(index)).ifPresent(parsed::add);
    }
    return parsed.size() == texts.size() ? Optional.of(parsed) : Optional.empty();
  }

  private Optional<Destination> destination(String pointer, String text) {
    if (text.equals("stay")) {
      return Optional.of(new Destination.Stay());
    }
    if (text.startsWith("leave ")) {
      return vocabulary.way(pointer, text.substring(6).strip()).map(Destination.Leave::new);
    }
    Optional<Destination> location =
        switch (text) {
          case "location" -> Optional.of(new Destination.ToLocation());
          case "next location" -> Optional.of(new Destination.ToNeighbour(Effect.Move.NEXT));
          case "previous location" ->
              Optional.of(new Destination.ToNeighbour(Effect.Move.PREVIOUS));
          default -> Optional.empty();
        };
    if (location.isEmpty()) {
      return vocabulary.screen(pointer, text).map(Destination.ToScreen::new);
    }
    if (!hasLocations) {
      faults.add(
          pointer,
          "leads to a location, and there are none",
          "locations in the description",
          "add locations, or lead to a screen");
    }
    return location;
  }
}
