package keenward.core.building.placing;

import keenward.core.plan.Device;

/**
 * A detector that is proposed.
 *
 * @param device the detector, as it would stand in the plan
 * @param candidate its place
 * @param squareMetres how much floor of the wanted rooms it sees
 */
public record Placement(Device device, Candidate candidate, double squareMetres) {

  /** Why there, in words. */
  public String reason() {
    StringBuilder reason =
        new StringBuilder(candidate.mount().words())
            .append(", sees ")
            .append(Math.round(squareMetres))
            .append(" m2");
    candidate
        .glare()
        .ifPresentOrElse(
            opening ->
                reason.append("; looks straight at '").append(opening).append("': mind the sun"),
            () -> reason.append("; looks at no window"));
    return reason.toString();
  }
}
