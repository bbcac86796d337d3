package keenward.files.zonelist;

import keenward.core.plan.DeviceKind;
import keenward.core.plan.ZoneResponse;

/**
 * The words of the trade and those that a person adds.
 *
 * @param responses words for what zones do
 * @param kinds words for what is fitted
 */
record KnownWords(Vocabulary<ZoneResponse> responses, Vocabulary<DeviceKind> kinds) {

  static KnownWords with(ListMap map) {
    return new KnownWords(Words.RESPONSES.with(map.responses()), Words.KINDS.with(map.devices()));
  }
}
