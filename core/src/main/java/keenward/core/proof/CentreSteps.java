package keenward.core.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Monitoring;
import keenward.core.plan.Partition;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SignalFormat;
import keenward.core.plan.SignalPath;
import keenward.core.plan.User;
import keenward.core.plan.UserRole;
import keenward.core.reporting.Qualifier;

/**
 * The way to the monitoring centre: on test, arming reports, duress, test signal, each path, off
 * test.
 */
final class CentreSteps {
  private static final int DURESS = 121;
  private static final int BY_USER = 401;
  private static final int TEST_BY_HAND = 601;
  private static final int PERIODIC_TEST = 602;

  private final TestContext context;

  CentreSteps(TestContext context) {
    this.context = context;
  }

  List<MissingFact> missing() {
    List<MissingFact> missing = new ArrayList<>();
    Optional<Monitoring> monitoring = context.monitoring();
    if (context.account().isEmpty()) {
      missing.add(
          new MissingFact(
              PlanPath.of("monitoring"),
              "under which account the centre must receive the signals",
              monitoring.isEmpty() ? "monitoring: { account: ... }" : "account: ..."));
    }
    if (monitoring.isEmpty()) {
      return missing;
    }
    if (monitoring.get().paths().isEmpty()) {
      missing.add(
          new MissingFact(
              PlanPath.of("monitoring"), "the paths to the centre", "paths: [ip, mobile]"));
    }
    if (!monitoring.get().openingsAndClosings().isGiven()) {
      missing.add(
          new MissingFact(
              PlanPath.of("monitoring"),
              "whether the centre must receive openings and closings",
              "openings and closings: yes"));
    }
    if (monitoring.get().format().find().filter(SignalFormat.DC_03::equals).isPresent()) {
      missing.add(
          new MissingFact(
              PlanPath.of("monitoring", "format"),
              "the letter codes that the centre must receive; the list gives the number codes of DC-05",
              "format: dc-05"));
    }
    return missing;
  }

  TestStep before() {
    String phone =
        context
            .monitoring()
            .flatMap(each -> each.phone().find())
            .map(number -> " (" + number + ")")
            .orElse("");
    String account =
        context.account().map(digits -> "account " + digits).orElse("the site's account");
    return TestStep.of(
            Phase.BEFORE,
            new TestSubject.Item("on test"),
            "Ask "
                + context.centre()
                + phone
                + " to put "
                + account
                + " on test. Write down who confirmed, from when and until when. Tell the people in and near the"
                + " building. Test nothing before that.")
        .cautions(List.of(Caution.SENDS_HELP));
  }

  TestStep after() {
    return TestStep.of(
        Phase.AFTER,
        new TestSubject.Item("off test"),
        "Compare the centre's list with this one, signal by signal. Reset and restore everything, take away every bypass."
            + " Then ask "
            + context.centre()
            + " to take the account off test, and write down who confirmed and when.");
  }

  List<TestStep> steps() {
    List<TestStep> steps = new ArrayList<>();
    for (Partition partition : context.plan().partitions()) {
      arming(partition).ifPresent(steps::add);
    }
    context.plan().users().stream()
        .filter(user -> user.role() == UserRole.DURESS)
        .forEach(user -> steps.add(duress(user)));
    context.monitoring().ifPresent(monitoring -> steps.addAll(paths(monitoring)));
    return steps;
  }

  private Optional<TestStep> arming(Partition partition) {
    boolean reported =
        context.monitoring().flatMap(each -> each.openingsAndClosings().find()).orElse(false);
    // A common area is armed and disarmed with its partitions and has no user of its own.
    if (!reported || !partition.commonTo().isEmpty()) {
      return Optional.empty();
    }
    Optional<User> user =
        context.plan().users().stream()
            .filter(each -> each.role() == UserRole.MASTER || each.role() == UserRole.USER)
            .filter(each -> each.partitions().contains(partition.name()))
            .findFirst();
    OptionalInt number =
        user.map(each -> OptionalInt.of(each.number())).orElse(OptionalInt.empty());
    return Optional.of(
        TestStep.of(
                Phase.SUPERVISED,
                new TestSubject.Item("closing and opening of " + partition.name()),
                "Let "
                    + user.map(User::name).orElse("a user")
                    + " arm "
                    + partition.name()
                    + " away, wait for the exit time, then disarm.")
            .in(partition.number())
            .given("System disarmed, account on test")
            .shows("At " + context.keypads(partition) + ": armed away, then disarmed")
            .signals(
                List.of(
                    context.signal(
                        Qualifier.RESTORE,
                        BY_USER,
                        List.of(),
                        partition.number(),
                        number,
                        "on arming"),
                    context.signal(
                        Qualifier.NEW_EVENT,
                        BY_USER,
                        List.of(),
                        partition.number(),
                        number,
                        "on disarming"))));
  }

  private TestStep duress(User user) {
    String name = user.partitions().isEmpty() ? "" : user.partitions().getFirst();
    Partition partition =
        context.plan().findPartition(name).orElse(context.plan().partitions().getFirst());
    return TestStep.of(
            Phase.SUPERVISED,
            new TestSubject.Item("duress, user " + user.number()),
            "Arm "
                + partition.name()
                + ", then disarm it with the duress code of user "
                + user.number()
                + ", with nobody watching who need not know it.")
        .in(partition.number())
        .given(partition.name() + " armed, account on test")
        .shows("An ordinary disarming; nothing else is shown and nothing sounds")
        .signals(
            List.of(context.signal(Qualifier.NEW_EVENT, DURESS, partition.number(), user.number())))
        .cautions(List.of(Caution.SENDS_HELP));
  }

  private List<TestStep> paths(Monitoring monitoring) {
    List<TestStep> steps = new ArrayList<>();
    steps.add(
        TestStep.of(
                Phase.SUPERVISED,
                new TestSubject.Item("test signal"),
                "Send a test signal by hand"
                    + monitoring
                        .testInterval()
                        .find()
                        .map(every ->
                            "; ask the centre whether the periodic one comes every "
                                + every.written())
                        .orElse("")
                    + ".")
            .signals(
                List.of(
                    context.signal(
                        Qualifier.NEW_EVENT,
                        TEST_BY_HAND,
                        List.of(PERIODIC_TEST),
                        0,
                        OptionalInt.empty(),
                        ""))));
    for (SignalPath path : monitoring.paths()) {
      steps.add(path(monitoring, path));
    }
    return steps;
  }

  private TestStep path(Monitoring monitoring, SignalPath path) {
    boolean only = monitoring.paths().size() == 1;
    String polling =
        monitoring
            .polling()
            .find()
            .map(every -> " within its polling interval of " + every.written())
            .orElse("");
    String action =
        "Take the "
            + words(path)
            + " away, as the communicator's maker says"
            + (only
                ? ": the centre must notice by itself" + polling
                : ": the other path must report it, and carry a test signal")
            + ". Put it back.";
    List<ExpectedSignal> signals =
        only
            ? List.of(
                context.signal(
                    Qualifier.RESTORE,
                    trouble(path),
                    otherTrouble(path),
                    0,
                    OptionalInt.empty(),
                    "once the path is back"))
            : context.eventAndRestore(
                trouble(path), otherTrouble(path), 0, OptionalInt.empty(), "by another path");
    return TestStep.of(Phase.SUPERVISED, new TestSubject.Item("path by " + words(path)), action)
        .given("System disarmed, account on test")
        .shows("Trouble of the path")
        .signals(signals);
  }

  private static int trouble(SignalPath path) {
    return switch (path) {
      case IP, MOBILE -> 350;
      case TELEPHONE -> 351;
      case PRIVATE_RADIO -> 353;
    };
  }

  private static List<Integer> otherTrouble(SignalPath path) {
    return switch (path) {
      case IP -> List.of(351, 352, 356);
      case MOBILE -> List.of(351, 352, 353, 356);
      case TELEPHONE -> List.of(350, 352);
      case PRIVATE_RADIO -> List.of(350, 355);
    };
  }

  private static String words(SignalPath path) {
    return switch (path) {
      case IP -> "fixed internet connection";
      case MOBILE -> "mobile network";
      case TELEPHONE -> "telephone line";
      case PRIVATE_RADIO -> "private radio";
    };
  }
}
