package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Input;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.TypedForm;

/** Moves on a screen that waits for a transmitter. */
final class HearMoves {
  private final Moves moves;

  HearMoves(Moves moves) {
    this.moves = moves;
  }

  void find(Entry.Hear entry) {
    moves.add(from -> moves.start(from).pause(entry.waitTenths() - from.clocks().onScreen()));
    Optional<Slot> serial = moves.interpreter().slot(moves.state, entry.serial());
    Optional<Slot> part =
        entry.part().flatMap(field -> moves.interpreter().slot(moves.state, field));
    if (serial.isEmpty() || !moves.task.matters(serial.get())) {
      return;
    }
    Optional<String> number =
        TypedForm.write(serial.get().field().type(), moves.task.wanted.get(serial.get()));
    if (number.isPresent()) {
      learn(entry, serial.get(), number.get(), partWord(part));
    }
  }

  /** The input to send from: the wanted one, or the one held where the plan does not say. */
  private String partWord(Optional<Slot> part) {
    if (part.isEmpty()) {
      return "";
    }
    Value wanted = moves.task.wanted.get(part.get());
    return wanted instanceof Value.Word word ? word.word() : "";
  }

  private void learn(Entry.Hear entry, Slot serial, String number, String part) {
    Completion.Deed sending =
        from -> {
          Run run = moves.start(from);
          for (int time = 0; time < Math.max(1, entry.times()); time++) {
            run.transmit(number, part);
          }
          return run;
        };
    List<Completion.Leaf> fresh = new ArrayList<>();
    List<Completion.Leaf> known = new ArrayList<>();
    for (State holder :
        moves.interpreter().holders(moves.state, new Input.TransmitterHeard(number, part))) {
      for (Completion.Leaf leaf : moves.completion.of(holder, sending)) {
        if (leaf.run().alive() && moves.allowed(leaf.run())) {
          fresh.add(leaf);
        } else if (leaf.run().knownElsewhere()) {
          known.add(leaf);
        } else {
          return;
        }
      }
    }
    if (fresh.isEmpty()) {
      if (!known.isEmpty() && serial.field().byRecord()) {
        moves.task.notice(
            serial,
            Reasons.transmitterKnown(
                serial,
                number,
                serial.field().record() + " " + known.get(0).run().state().other()));
      }
      return;
    }
    Optional<Edge> learnt = moves.joined(moves.state, fresh);
    if (learnt.isEmpty()) {
      return;
    }
    if (known.isEmpty()) {
      moves.addEdge(learnt.get());
      return;
    }
    State after = learnt.get().after();
    moves.addEdge(
        new Edge(halting(serial, number, learnt.get(), after, known), after, learnt.get().cost()));
  }

  private List<Item> halting(
      Slot serial, String number, Edge learnt, State after, List<Completion.Leaf> known) {
    List<Item> items = new ArrayList<>(learnt.items());
    State refused = known.get(0).run().state();
    items.add(
        new Item.Split(
            after,
            serial,
            List.of(
                new Item.Case(List.of(moves.task.wanted.get(serial)), after, List.of()),
                new Item.Case(
                    List.of(),
                    refused,
                    List.of(
                        new Item.Halt(
                            refused,
                            "Another record knows transmitter "
                                + number
                                + ". Leave, free it there, and have a new order made from what the panel holds.")))),
            true));
    return items;
  }
}
