package keenward.core.rules.users;

import static keenward.core.plan.UserRole.MASTER;
import static keenward.core.plan.UserRole.TECHNICIAN;
import static keenward.core.plan.UserRole.USER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class RoleNobodyHasTest {

  private final RoleNobodyHas rule = new RoleNobodyHas();

  @Test
  void findsASiteWithoutMasterAndTechnician() {
    assertThat(findings(rule, PlanBuilder.site().user(1, "Ines", USER)))
        .containsExactly(
            "warning at users: The plan has 1 user and none with the role master, so nobody is on record"
                + " to manage the codes of the others.",
            "advice at users: The plan has 1 user and none with the role technician, so nobody is on"
                + " record to keep the programming code.");
  }

  @Test
  void passesASiteWithBoth() {
    assertThat(
            findings(
                rule, PlanBuilder.site().user(1, "Ines", MASTER).user(2, "Service", TECHNICIAN)))
        .isEmpty();
  }

  @Test
  void doesNotAssessWithoutUsers() {
    assertThat(notAssessed(rule, PlanBuilder.site())).hasSize(1);
  }
}
