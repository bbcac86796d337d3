package keenward.core.radio;

/**
 * Building materials of Rec. ITU-R P.2040-3, Table 3: relative permittivity a f^b and conductivity
 * c f^d in S/m, f in GHz. Floorboard, which holds from 50 GHz, and metal are left out.
 */
public enum Dielectric {
  CONCRETE("concrete", 5.24, 0.0462, 0.7822, 1, 100),
  BRICK("brick", 3.91, 0.0238, 0.16, 1, 40),
  PLASTERBOARD("plasterboard", 2.73, 0.0085, 0.9395, 1, 100),
  WOOD("wood", 1.99, 0.0047, 1.0718, 0.001, 100),
  GLASS("glass", 6.31, 0.0036, 1.3394, 0.1, 100),
  CEILING_BOARD("ceiling board", 1.48, 0.0011, 1.075, 1, 100),
  CHIPBOARD("chipboard", 2.58, 0.0217, 0.78, 1, 100),
  PLYWOOD("plywood", 2.71, 0.33, 0, 1, 40),
  MARBLE("marble", 7.074, 0.0055, 0.9262, 1, 60);

  /** 1 / (2 pi epsilon-0) at 1 GHz, as the Recommendation rounds it. */
  private static final double LOSS_FACTOR = 17.98;

  private final String word;
  private final double permittivity;
  private final double conductivityAtOne;
  private final double conductivityExponent;
  private final double leastGigahertz;
  private final double mostGigahertz;

  Dielectric(String word, double a, double c, double d, double least, double most) {
    this.word = word;
    this.permittivity = a;
    this.conductivityAtOne = c;
    this.conductivityExponent = d;
    this.leastGigahertz = least;
    this.mostGigahertz = most;
  }

  /** Its name in the table. */
  public String word() {
    return word;
  }

  /** Real part of the relative permittivity; of these rows none depends on the frequency. */
  public double permittivity() {
    return permittivity;
  }

  /** Conductivity in S/m. */
  public double conductivity(double gigahertz) {
    return conductivityAtOne * Math.pow(gigahertz, conductivityExponent);
  }

  /** Whether the table holds at a frequency; elsewhere it is extended beyond its range. */
  public boolean holdsAt(double gigahertz) {
    return gigahertz >= leastGigahertz && gigahertz <= mostGigahertz;
  }

  /** Loss inside the material, its surfaces left out, in decibels a metre. */
  public double lossDecibelsAMetre(double gigahertz) {
    return 20 / Math.log(10) * wavesAMetre(gigahertz) * -index(gigahertz).imaginary();
  }

  /**
   * Loss of a wave that meets a slab squarely, with all that its two surfaces throw back and forth
   * (P.2040, slab of one layer), in decibels.
   */
  public double slabLossDecibels(double gigahertz, double metres) {
    Complex index = index(gigahertz);
    Complex surface = Complex.ONE.minus(index).over(Complex.ONE.plus(index));
    Complex twice = surface.times(surface);
    double waves = wavesAMetre(gigahertz) * metres;
    Complex once = Complex.polar(Math.exp(waves * index.imaginary()), -waves * index.real());
    Complex through =
        Complex.ONE.minus(twice).times(once).over(Complex.ONE.minus(twice.times(once).times(once)));
    return -20 * Math.log10(through.size());
  }

  /** Phase of a wave in air, in radians a metre. */
  private static double wavesAMetre(double gigahertz) {
    return 2 * Math.PI / FreeSpace.wavelengthMetres(1000 * gigahertz);
  }

  private Complex index(double gigahertz) {
    return new Complex(permittivity, -LOSS_FACTOR * conductivity(gigahertz) / gigahertz).root();
  }

  private record Complex(double real, double imaginary) {

    static final Complex ONE = new Complex(1, 0);

    static Complex polar(double size, double angle) {
      return new Complex(size * Math.cos(angle), size * Math.sin(angle));
    }

    Complex plus(Complex other) {
      return new Complex(real + other.real, imaginary + other.imaginary);
    }

    Complex minus(Complex other) {
      return new Complex(real - other.real, imaginary - other.imaginary);
    }

    Complex times(Complex other) {
      return new Complex(
          real * other.real - imaginary * other.imaginary,
          real * other.imaginary + imaginary * other.real);
    }

    Complex over(Complex other) {
      double square = other.real * other.real + other.imaginary * other.imaginary;
      Complex above = times(new Complex(other.real, -other.imaginary));
      return new Complex(above.real / square, above.imaginary / square);
    }

    Complex root() {
      return polar(Math.sqrt(size()), Math.atan2(imaginary, real) / 2);
    }

    double size() {
      return Math.hypot(real, imaginary);
    }
  }
}
