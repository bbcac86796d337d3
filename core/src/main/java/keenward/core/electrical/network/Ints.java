package keenward.core.electrical.network;

import java.util.Arrays;

/** A list of numbers that grows. */
final class Ints {
  private int[] values;
  private int size;

  Ints(int expected) {
    values = new int[Math.max(4, expected)];
  }

  int size() {
    return size;
  }

  int get(int index) {
    return values[index];
  }

  void add(int value) {
    if (size == values.length) {
      values = Arrays.copyOf(values, 2 * size);
    }
    values[size++] = value;
  }

  int removeLast() {
    return values[--size];
  }

  int[] toArray() {
    return Arrays.copyOf(values, size);
  }
}
