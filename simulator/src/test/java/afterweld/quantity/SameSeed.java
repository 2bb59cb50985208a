package afterweld.quantity;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Draws the same values in every build, so that a build that failed fails again. With {@code
 * -Prandom} each run draws its own; what it finds joins the tests as an example.
 */
public final class SameSeed implements AroundPropertyHook {
  private static final String SEED = "6061";
  private static final boolean RANDOM = Boolean.getBoolean("afterweld.random");

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    if (!RANDOM && context.attributes().seed().isEmpty()) {
      context.attributes().setSeed(SEED);
    }
    return property.execute();
  }

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  /** Outermost: a seed is chosen before anything is drawn. */
  @Override
  public int aroundPropertyProximity() {
    return -100;
  }
}
