package keenward.core.dialogue.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.order.OrderRequest;
import keenward.core.dialogue.order.Prepared;
import keenward.core.dialogue.order.Proof;
import keenward.core.dialogue.order.Reason;
import keenward.core.dialogue.order.WorkOrder;
import keenward.core.dialogue.replay.Replay;
import keenward.core.dialogue.search.Compiler;
import keenward.core.progress.Progress;

/** Work orders with their proof. */
public final class Orders {
  private Orders() {}

  /**
   * An order that brings the panel from found to planned, replayed and proved; or the reasons why
   * there is none. An order that the replay refutes is never handed out.
   */
  public static Prepared prepare(OrderRequest request, Progress progress) {
    Interpreter interpreter = new Interpreter(request.description());
    if (request.found().size() != interpreter.layout().size()) {
      throw new IllegalArgumentException("memory of another panel");
    }
    return switch (Compiler.compile(request, interpreter, progress)) {
      case Compiler.Outcome.NotMade not -> new Prepared.Refused(not.reasons());
      case Compiler.Outcome.Made made -> proved(request, interpreter, made.order(), progress);
    };
  }

  private static Prepared proved(
      OrderRequest request, Interpreter interpreter, WorkOrder order, Progress progress) {
    Proof proof = Replay.run(interpreter, request.found(), order, request.planned(), progress);
    if (proof.proved()) {
      return new Prepared.Ready(order, proof, Canonical.of(request, order));
    }
    List<Reason> reasons = new ArrayList<>();
    for (Proof.Refutation refutation : proof.refutations()) {
      reasons.add(
          new Reason(
              Reason.Kind.NOT_PROVED,
              Optional.empty(),
              "Step "
                  + refutation.atInstruction()
                  + " of what was found does not stand the replay: "
                  + refutation.what(),
              "Give a found file that says more of what the panel holds, and report this panel's description."));
    }
    return new Prepared.Refused(reasons);
  }
}
