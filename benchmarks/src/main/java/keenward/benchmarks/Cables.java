package keenward.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import keenward.core.electrical.network.Network;
import keenward.core.electrical.network.NetworkState;
import keenward.core.electrical.network.NodeLoads;
import keenward.core.electrical.network.Segment;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Voltages of a tree of 1,000 nodes with a load of constant current at each: the solver of
 * networks, and a sparse Cholesky decomposition (EJML), its nodes numbered from the leaves inwards,
 * the order in which nothing is filled in. {@link #main} prints the same tree for ngspice.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class Cables {
  private static final int NODES = 1_000;
  private static final int UNKNOWNS = NODES - 1;
  private static final double SUPPLY_VOLTS = 12;
  private static final double MOST_DIFFERENCE = 1e-9;

  private final List<Segment> segments = new ArrayList<>();
  private final double[] amperes = new double[NODES];
  private final NodeLoads loads = new NodeLoads(NODES);
  private final NodeLoads regulators = new NodeLoads(NODES);
  private final DMatrixRMaj right = new DMatrixRMaj(UNKNOWNS, 1);
  private final DMatrixRMaj volts = new DMatrixRMaj(UNKNOWNS, 1);
  private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
      LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
  private DMatrixSparseCSC matrix = new DMatrixSparseCSC(0, 0);
  private Network network = Network.of(1, List.of());

  /** A random tree, the same each time. */
  @Setup
  public void grow() {
    Random random = new Random(60_228);
    for (int node = 1; node < NODES; node++) {
      segments.add(new Segment(random.nextInt(node), node, 0.01 + random.nextDouble()));
      amperes[node] = random.nextDouble() * 1e-3;
      loads.current(node, amperes[node]);
      regulators.power(node, amperes[node] * SUPPLY_VOLTS);
    }
    network = Network.of(NODES, segments);
    compare();
    solve(solver);
    solver.setStructureLocked(true);
  }

  private void compare() {
    NetworkState.Steady own = steady(keenward());
    double[] other = sparseCholesky();
    for (int node = 1; node < NODES; node++) {
      if (Math.abs(own.volts(node) - other[NODES - 1 - node]) > MOST_DIFFERENCE) {
        throw new IllegalStateException("the solvers differ at node " + node);
      }
    }
    steady(keenwardWithRegulators());
  }

  private static NetworkState.Steady steady(NetworkState state) {
    return switch (state) {
      case NetworkState.Steady steady -> steady;
      case NetworkState.Collapsed collapsed -> throw new IllegalStateException("collapsed");
    };
  }

  /** The network built and solved. */
  @Benchmark
  public NetworkState keenward() {
    return Network.of(NODES, segments).solve(SUPPLY_VOLTS, loads);
  }

  /** The same with loads of constant power. */
  @Benchmark
  public NetworkState keenwardWithRegulators() {
    return Network.of(NODES, segments).solve(SUPPLY_VOLTS, regulators);
  }

  /** Solved for other loads, the order of elimination known. */
  @Benchmark
  public NetworkState keenwardAgain() {
    return network.solve(SUPPLY_VOLTS, loads);
  }

  /** Decomposed and solved anew, the matrix and its pattern known. */
  @Benchmark
  public DMatrixRMaj sparseCholeskyAgain() {
    solve(solver);
    return volts;
  }

  /** The matrix built, decomposed and solved. */
  @Benchmark
  public double[] sparseCholesky() {
    matrix = build();
    solve(LinearSolverFactory_DSCC.cholesky(FillReducing.NONE));
    return volts.data;
  }

  private void solve(LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> used) {
    if (!used.setA(matrix)) {
      throw new IllegalStateException("the matrix is not positive definite");
    }
    used.solve(right, volts);
  }

  private DMatrixSparseCSC build() {
    DMatrixSparseTriplet entries = new DMatrixSparseTriplet(UNKNOWNS, UNKNOWNS, 4 * NODES);
    double[] diagonal = new double[UNKNOWNS];
    right.zero();
    for (Segment each : segments) {
      double siemens = 1 / each.ohms();
      int other = NODES - 1 - each.other();
      diagonal[other] += siemens;
      if (each.one() == 0) {
        right.add(other, 0, siemens * SUPPLY_VOLTS);
      } else {
        int one = NODES - 1 - each.one();
        diagonal[one] += siemens;
        entries.addItem(one, other, -siemens);
        entries.addItem(other, one, -siemens);
      }
    }
    for (int row = 0; row < UNKNOWNS; row++) {
      entries.addItem(row, row, diagonal[row]);
      right.add(row, 0, -amperes[NODES - 1 - row]);
    }
    return DConvertMatrixStruct.convert(entries, (DMatrixSparseCSC) null);
  }

  /** Prints the tree as a netlist that tells how long the analysis takes. */
  public static void main(String[] arguments) {
    Cables cables = new Cables();
    cables.grow();
    StringBuilder net = new StringBuilder("keenward\nV0 n0 0 12\n");
    int number = 0;
    for (Segment each : cables.segments) {
      net.append(
          String.format(
              Locale.ROOT, "R%d n%d n%d %.9g%n", ++number, each.one(), each.other(), each.ohms()));
    }
    IntStream.range(1, NODES)
        .forEach(node ->
            net.append(
                String.format(Locale.ROOT, "I%d n%d 0 %.9g%n", node, node, cables.amperes[node])));
    net.append(
        ".control\nop\nop\nop\nop\nop\nop\nop\nop\nop\nop\nrusage time\nquit\n.endc\n.end\n");
    System.out.print(net);
  }
}
