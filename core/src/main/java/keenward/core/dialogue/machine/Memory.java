package keenward.core.dialogue.machine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import keenward.core.dialogue.description.Value;
import org.jspecify.annotations.Nullable;

/**
 * The values of all slots. Immutable: {@link #with} shares all but one block with the memory that
 * it came from, and keeps the hash up to date, so that memories make good keys of a search.
 */
public final class Memory {
  private static final int BLOCK_BITS = 5;
  private static final int BLOCK_SIZE = 1 << BLOCK_BITS;

  private final Value[][] blocks;
  private final int size;
  private final int hash;

  private Memory(Value[][] blocks, int size, int hash) {
    this.blocks = blocks;
    this.size = size;
    this.hash = hash;
  }

  /** A memory with these values, slot by slot. */
  public static Memory of(Value[] values) {
    Value[][] blocks = new Value[(values.length + BLOCK_SIZE - 1) / BLOCK_SIZE][];
    int hash = 0;
    for (int block = 0; block < blocks.length; block++) {
      int from = block * BLOCK_SIZE;
      blocks[block] = Arrays.copyOfRange(values, from, Math.min(values.length, from + BLOCK_SIZE));
    }
    for (int index = 0; index < values.length; index++) {
      hash += mixed(index, values[index]);
    }
    return new Memory(blocks, values.length, hash);
  }

  /** How many slots there are. */
  public int size() {
    return size;
  }

  /** The value at a slot's index. */
  public Value get(int index) {
    return blocks[index >> BLOCK_BITS][index & (BLOCK_SIZE - 1)];
  }

  /** The value of a slot. */
  public Value get(Slot slot) {
    return get(slot.index());
  }

  /** The same memory with another value at a slot's index. */
  public Memory with(int index, Value value) {
    Value before = get(index);
    if (before.equals(value)) {
      return this;
    }
    Value[][] changed = blocks.clone();
    Value[] block = changed[index >> BLOCK_BITS].clone();
    block[index & (BLOCK_SIZE - 1)] = value;
    changed[index >> BLOCK_BITS] = block;
    return new Memory(changed, size, hash - mixed(index, before) + mixed(index, value));
  }

  /** The same memory with another value in a slot. */
  public Memory with(Slot slot, Value value) {
    return with(slot.index(), value);
  }

  /** Indices of the slots whose values differ, ascending. */
  public List<Integer> differences(Memory other) {
    List<Integer> indices = new ArrayList<>();
    for (int block = 0; block < blocks.length; block++) {
      if (Arrays.equals(blocks[block], other.blocks[block])) {
        continue;
      }
      for (int place = 0; place < blocks[block].length; place++) {
        if (!blocks[block][place].equals(other.blocks[block][place])) {
          indices.add(block * BLOCK_SIZE + place);
        }
      }
    }
    return indices;
  }

  /** A memory that stands for both: what differs is unknown, except what neither may hold. */
  Memory join(Memory other) {
    Memory joined = this;
    for (int index : differences(other)) {
      joined = joined.with(index, either(get(index), other.get(index)));
    }
    return joined;
  }

  private static Value either(Value first, Value second) {
    Set<Value> neither = new HashSet<>();
    exclude(neither, first, second);
    exclude(neither, second, first);
    return new Value.Unknown(neither);
  }

  private static void exclude(Set<Value> neither, Value from, Value other) {
    if (from instanceof Value.Unknown unknown) {
      for (Value value : unknown.except()) {
        if (!other.mayBe(value)) {
          neither.add(value);
        }
      }
    }
  }

  @Override
  public boolean equals(@Nullable Object object) {
    if (this == object) {
      return true;
    }
    if (!(object instanceof Memory other) || hash != other.hash || size != other.size) {
      return false;
    }
    for (int block = 0; block < blocks.length; block++) {
      if (!Arrays.equals(blocks[block], other.blocks[block])) {
        return false;
      }
    }
    return true;
  }

  @Override
  public int hashCode() {
    return hash;
  }

  private static int mixed(int index, Value value) {
    int mixed = ((index + 1) * 0x9E3779B9) ^ (value.hashCode() * 0x85EBCA6B);
    mixed ^= mixed >>> 15;
    mixed *= 0x2C1B3C6D;
    return mixed ^ (mixed >>> 13);
  }
}
