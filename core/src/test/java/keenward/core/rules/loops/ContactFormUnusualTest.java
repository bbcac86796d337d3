package keenward.core.rules.loops;

import static keenward.core.plan.ContactForm.NORMALLY_CLOSED;
import static keenward.core.plan.ContactForm.NORMALLY_OPEN;
import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.SMOKE;
import static keenward.core.plan.DeviceKind.WATER;
import static keenward.core.plan.ZoneResponse.FIRE;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.plan.ZoneResponse.TECHNICAL;
import static keenward.core.rules.RuleCheck.findings;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class ContactFormUnusualTest {

  private final ContactFormUnusual rule = new ContactFormUnusual();

  @Test
  void findsAnIntruderContactThatIsOpenAtRestAndASmokeDetectorThatIsClosed() {
    assertThat(
            findings(
                rule,
                PlanBuilder.site()
                    .zone(1, "Door", PERIMETER, zone -> zone.kind(CONTACT).contact(NORMALLY_OPEN))
                    .zone(2, "Smoke", FIRE, zone -> zone.kind(SMOKE).contact(NORMALLY_CLOSED))))
        .hasSize(2)
        .first()
        .asString()
        .isEqualTo(
            "warning at zones / 1 / contact: Zone 1 'Door' has a contact that is normally-open, and"
                + " detectors of its kind are normally-closed.");
  }

  @Test
  void passesTheUsualFormsTheUnstatedTheReasonedAndKindsThatComeBothWays() {
    assertThat(
            findings(
                rule,
                PlanBuilder.site()
                    .zone(1, "Door", PERIMETER, zone -> zone.kind(CONTACT).contact(NORMALLY_CLOSED))
                    .zone(2, "Hatch", PERIMETER, zone -> zone.kind(CONTACT))
                    .zone(
                        3,
                        "Vault",
                        PERIMETER,
                        zone -> zone.kind(CONTACT).contact(NORMALLY_OPEN).reason("old bolt switch"))
                    .zone(4, "Leak", TECHNICAL, zone -> zone.kind(WATER).contact(NORMALLY_OPEN))))
        .isEmpty();
  }
}
