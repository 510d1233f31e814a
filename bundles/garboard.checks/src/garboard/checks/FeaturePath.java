// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * An input of a check: a chain of features that starts at the check's subject or, when the first feature belongs to a
 * part that the record has once (vessel, set, siphon break ...), at that part. A many-valued feature in the chain means
 * each of its elements; an empty list counts as not entered.
 */
public final class FeaturePath {

    private record Step(EStructuralFeature feature, Predicate<EObject> which) {
    }

    private final List<Step> steps;

    private FeaturePath(List<Step> steps) {
        this.steps = List.copyOf(steps);
    }

    /** The path over these features, in order. */
    public static FeaturePath path(EStructuralFeature first, EStructuralFeature... more) {
        var path = new FeaturePath(List.of(new Step(first, object -> true)));
        for (EStructuralFeature feature : more) {
            path = path.then(feature);
        }
        return path;
    }

    /** The path going on with one more feature. */
    public FeaturePath then(EStructuralFeature feature) {
        EStructuralFeature last = last();
        if (!(last.getEType() instanceof org.eclipse.emf.ecore.EClass type)
                || !feature.getEContainingClass().isSuperTypeOf(type)) {
            throw new IllegalArgumentException(
                    feature.getName() + " is not a feature of " + last.getEType().getName() + ", where the path stands");
        }
        var longer = new ArrayList<>(steps);
        longer.add(new Step(feature, object -> true));
        return new FeaturePath(longer);
    }

    /** Only those elements of the last list that the predicate takes; none of them counts as not entered. */
    @SuppressWarnings("unchecked")
    public <T extends EObject> FeaturePath where(Class<T> type, Predicate<T> which) {
        var narrowed = new ArrayList<>(steps);
        Step last = narrowed.removeLast();
        narrowed.add(new Step(last.feature(), object -> type.isInstance(object) && which.test((T) object)));
        return new FeaturePath(narrowed);
    }

    public EStructuralFeature first() {
        return steps.getFirst().feature();
    }

    public EStructuralFeature last() {
        return steps.getLast().feature();
    }

    /** All features along the path: an edit of any of them may change a verdict that needs this path. */
    public List<EStructuralFeature> features() {
        return steps.stream().map(Step::feature).toList();
    }

    /** Visits every place where the path ends or breaks off. */
    void walk(EObject start, Visitor visitor) {
        walk(start, 0, visitor);
    }

    private void walk(EObject owner, int index, Visitor visitor) {
        Step step = steps.get(index);
        EStructuralFeature feature = step.feature();
        if (!owner.eIsSet(feature)) {
            visitor.missing(owner, remaining(index));
            return;
        }
        boolean end = index == steps.size() - 1;
        Object value = owner.eGet(feature);
        if (end && !feature.isMany()) {
            visitor.entered(owner, feature);
        } else if (feature.isMany()) {
            List<?> chosen = ((List<?>) value).stream()
                    .filter(element -> !(element instanceof EObject object) || step.which().test(object)).toList();
            if (chosen.isEmpty()) {
                visitor.missing(owner, remaining(index));
            } else if (end) {
                visitor.entered(owner, feature);
            } else {
                chosen.forEach(element -> walk((EObject) element, index + 1, visitor));
            }
        } else {
            walk((EObject) value, index + 1, visitor);
        }
    }

    private List<EStructuralFeature> remaining(int from) {
        return steps.subList(from, steps.size()).stream().map(Step::feature).toList();
    }

    /** Told of every end of the path. */
    interface Visitor {
        void entered(EObject owner, EStructuralFeature feature);

        /** @param rest the features not reached, the first of them not set on {@code owner} */
        void missing(EObject owner, List<EStructuralFeature> rest);
    }

    @Override
    public String toString() {
        return String.join(".", steps.stream().map(step -> step.feature().getName()).toList());
    }
}
