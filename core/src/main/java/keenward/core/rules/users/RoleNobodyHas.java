package keenward.core.rules.users;

import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.UserRole;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** Nobody holds a role that every system needs. */
public final class RoleNobodyHas implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.USERS, 2, "role-nobody-has", Severity.WARNING)
          .source(Source.practice())
          .purpose("Looks whether somebody is master, and somebody is technician.")
          .consequence(
              "Without a master nobody on site can change a code when somebody leaves; without a technician nobody"
                  + " is on record as keeping the programming code.")
          .limits("Says nothing about codes: they are never in a plan.")
          .remedy("Enter the master and the technician under `users:`.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              users:
                1: { name: Bram, role: user }
                2: { name: Technician, role: technician }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              users:
                1: { name: Bram, role: master }
                2: { name: Technician, role: technician }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              users:
                1: { name: Bram, role: master }
                3: { name: Guest, role: user }
                2: { name: Technician, role: technician }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    PlanPath place = PlanPath.of("users");
    if (plan.users().isEmpty()) {
      report.notAssessed(
          place,
          "who manages codes and who programs, since the plan names no users",
          "users: { 1: { name: ..., role: master } }");
      return;
    }
    judge(plan, UserRole.MASTER, "manage the codes of the others", Severity.WARNING, report);
    judge(plan, UserRole.TECHNICIAN, "keep the programming code", Severity.ADVICE, report);
  }

  private static void judge(
      SitePlan plan, UserRole role, String work, Severity severity, Report report) {
    report.judged();
    if (plan.users().stream().noneMatch(user -> user.role() == role)) {
      report.found(
          severity,
          PlanPath.of("users"),
          "The plan has "
              + Words.count(plan.users().size(), "user")
              + " and none with the role "
              + role.word()
              + ", so nobody is on record to "
              + work
              + ".",
          "Enter somebody with `role: " + role.word() + "`.",
          Involved.NOTHING);
    }
  }
}
