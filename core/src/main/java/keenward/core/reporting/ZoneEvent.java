package keenward.core.reporting;

/**
 * The event code that a zone reports.
 *
 * @param code DC-05 event code
 * @param reason why it is this one: stated in the plan, or usual for a response and a device
 */
public record ZoneEvent(int code, String reason) {}
