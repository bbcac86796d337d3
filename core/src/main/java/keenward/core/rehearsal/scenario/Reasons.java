package keenward.core.rehearsal.scenario;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import keenward.core.rehearsal.Behaviour;
import keenward.core.rehearsal.Explainer;
import keenward.core.rehearsal.Input;
import keenward.core.rehearsal.Output;
import org.jspecify.annotations.Nullable;

/** Builds the chain of reasons for each output, and keeps those that a running timer will need. */
final class Reasons implements Explainer {

  private final BiConsumer<Output, Moment> heard;
  private final Map<Integer, Node> remembered = new HashMap<>();
  private final List<Node> path = new ArrayList<>();
  private int now;

  /** When an output came, and why. */
  record Moment(int atTenths, Because because) {}

  /** A link of a chain; the first one has no parent and is an input, or nothing known. */
  private static final class Node {
    final @Nullable Node parent;
    final int atTenths;
    final @Nullable Input input;
    final @Nullable Behaviour behaviour;
    final int subject;
    final int tenths;
    final List<Node> given = new ArrayList<>(0);

    Node(
        @Nullable Node parent,
        int atTenths,
        @Nullable Input input,
        @Nullable Behaviour behaviour,
        int subject,
        int tenths) {
      this.parent = parent;
      this.atTenths = atTenths;
      this.input = input;
      this.behaviour = behaviour;
      this.subject = subject;
      this.tenths = tenths;
    }
  }

  /** Tells each output with its moment. */
  Reasons(BiConsumer<Output, Moment> heard) {
    this.heard = heard;
  }

  /** An input comes. */
  void begin(int atTenths, Input input) {
    now = atTenths;
    path.clear();
    boolean onlyTime = input instanceof Input.Advance;
    path.add(new Node(null, atTenths, onlyTime ? null : input, null, 0, 0));
  }

  @Override
  public void output(int afterTenths, Output output) {
    heard.accept(output, new Moment(now + afterTenths, because(path.getLast())));
  }

  @Override
  public void resume(int afterTenths, int key) {
    Node known = remembered.get(key);
    path.add(known == null ? new Node(null, now + afterTenths, null, null, 0, 0) : known);
  }

  @Override
  public void enter(int afterTenths, Behaviour behaviour, int subject, int tenths) {
    path.add(new Node(path.getLast(), now + afterTenths, null, behaviour, subject, tenths));
  }

  @Override
  public void leave() {
    path.removeLast();
  }

  @Override
  public void remember(int key) {
    remembered.put(key, path.getLast());
  }

  @Override
  public void given(int key) {
    Node known = remembered.get(key);
    if (known != null) {
      path.getLast().given.add(known);
    }
  }

  private static Because because(Node last) {
    List<Because.Step> steps = new ArrayList<>();
    Node node = last;
    while (node.behaviour != null && node.parent != null) {
      List<Because> given = new ArrayList<>(node.given.size());
      for (Node other : node.given) {
        given.add(because(other));
      }
      steps.add(new Because.Step(node.atTenths, node.behaviour, node.subject, node.tenths, given));
      node = node.parent;
    }
    return new Because(node.atTenths, Optional.ofNullable(node.input), steps.reversed());
  }
}
