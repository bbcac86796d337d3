package keenward.core.rehearsal;

/**
 * Hears, beside what the system does, why. The engine tells the steps in the order in which one
 * leads to the next; an engine that is given a plain {@link Listener} tells none of this and pays
 * nothing for it.
 */
public interface Explainer extends Listener {

  /** What follows goes back to what was remembered under this key, until {@link #leave()}. */
  void resume(int afterTenths, int key);

  /** A behaviour comes into play; what follows is because of it, until {@link #leave()}. */
  void enter(int afterTenths, Behaviour behaviour, int subject, int tenths);

  /** The latest behaviour has had its effect, or what was resumed has been dealt with. */
  void leave();

  /** The reasons so far are the reasons for whatever happens later under this key. */
  void remember(int key);

  /** The latest behaviour also holds because of what was remembered under this key. */
  void given(int key);
}
