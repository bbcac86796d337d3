package keenward.core.dialogue.search;

import java.util.List;

/** How many instructions items become. */
final class Count {
  private Count() {}

  static int of(List<Item> items) {
    int count = 0;
    for (Item item : items) {
      count += of(item);
    }
    return count;
  }

  static int of(Item item) {
    int count = 1;
    if (item instanceof Item.Split split) {
      for (Item.Case one : split.cases()) {
        count += of(one.items());
      }
    }
    return count;
  }
}
