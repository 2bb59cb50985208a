package afterweld.metallurgy;

/**
 * What stays the same along a history.
 *
 * @param budget what the composition has to give
 * @param cast whether the metal starts as solidified
 * @param classes sizes that needles are sorted into
 */
record Metal(SoluteBudget budget, boolean cast, NeedleClasses classes) {}
