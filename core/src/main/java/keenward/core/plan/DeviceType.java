package keenward.core.plan;

/**
 * A bought device, described once and used by many devices.
 *
 * @param name name, unique among types
 * @param traits what is true of every piece
 */
public record DeviceType(String name, DeviceTraits traits) {}
