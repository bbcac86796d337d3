package keenward.core.reporting;

/**
 * One DC-05 event code.
 *
 * @param number three digits, 100 to 654
 * @param meaning in few words
 * @param group the block it belongs to, such as "burglary alarm"
 * @param subject whether the last three digits of the message are a zone or a user
 * @param use what qualifiers 1 and 3 mean
 * @param standing whether it may be sent
 */
public record EventCode(
    int number,
    String meaning,
    String group,
    Subject subject,
    QualifierUse use,
    Standing standing) {}
