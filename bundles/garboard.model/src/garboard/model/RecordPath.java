// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Places in a record, written down. The key is for programs and files and stays the same while other items come and go:
 * {@code rawWater.hoses[hose-2].bore}; the record itself is the empty key. An item without an id is called by its number from 0,
 * {@code hoses[1]}, until it gets one. The words are for people: {@code Raw-water circuit › Hoses › hose-2 › Bore}.
 */
public final class RecordPath {

    /** One step of a key: a feature, and for an element of a list its id or number. */
    private static final Pattern STEP = Pattern.compile("([A-Za-z][A-Za-z0-9]*)(?:\\[([^\\[\\]]+)])?(?:\\.|$)");
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}");

    private RecordPath() {
    }

    /**
     * A field of a part that exists.
     *
     * @param owner   the part
     * @param feature the field, of the class of the part
     */
    public record Place(EObject owner, EStructuralFeature feature) {
    }

    /** {@return the key of a part, empty for the record itself} */
    public static String key(EObject part) {
        EObject owner = part.eContainer();
        if (owner == null) {
            return "";
        }
        EReference reference = part.eContainmentFeature();
        return key(owner, reference) + (reference.isMany() ? "[" + name(part, owner, reference) + "]" : "");
    }

    /** {@return the key of a field of a part} */
    public static String key(EObject owner, EStructuralFeature feature) {
        String above = key(owner);
        return above.isEmpty() ? feature.getName() : above + "." + feature.getName();
    }

    /**
     * {@return the key of a field below a part, over parts that need not exist}
     *
     * @param rest the fields that lead from the part to the place, at least one
     */
    public static String key(EObject owner, List<? extends EStructuralFeature> rest) {
        StringBuilder key = new StringBuilder(key(owner, rest.getFirst()));
        rest.stream().skip(1).forEach(feature -> key.append('.').append(feature.getName()));
        return key.toString();
    }

    /** {@return the field that a key names, empty when the key is malformed or the part that has the field does not exist} */
    public static Optional<Place> resolve(CommissioningRecord record, String key) {
        return steps(key).filter(steps -> steps.getLast().which().isEmpty())
            .flatMap(steps -> walk(record, steps.subList(0, steps.size() - 1), false)
                .map(owner -> new Place(owner, steps.getLast().feature())));
    }

    /** {@return the field that a key names} Single parts on the way that do not exist are created; elements of lists are not. */
    public static Optional<Place> reach(CommissioningRecord record, String key) {
        return steps(key).filter(steps -> steps.getLast().which().isEmpty())
            .flatMap(steps -> walk(record, steps.subList(0, steps.size() - 1), true)
                .map(owner -> new Place(owner, steps.getLast().feature())));
    }

    /** {@return the part that a key names, empty when the key is malformed or there is no such part} */
    public static Optional<EObject> part(CommissioningRecord record, String key) {
        return key.isEmpty() ? Optional.of(record)
            : steps(key).filter(steps -> leadsToPart(steps.getLast())).flatMap(steps -> walk(record, steps, false));
    }

    /** {@return a part in words, the title of the root for the record itself} */
    public static String words(EObject part, Labels labels) {
        EObject owner = part.eContainer();
        if (owner == null) {
            return labels.label(part.eClass());
        }
        EReference reference = part.eContainmentFeature();
        String step = words(owner, reference, labels);
        return reference.isMany() ? step + Labels.STEP + called(part, owner, reference, labels) : step;
    }

    /** {@return a field of a part in words} */
    public static String words(EObject owner, EStructuralFeature feature, Labels labels) {
        String step = labels.label(feature);
        return owner.eContainer() == null ? step : words(owner, labels) + Labels.STEP + step;
    }

    /**
     * {@return a field below a part in words, over parts that need not exist}
     *
     * @param rest the fields that lead from the part to the place, at least one
     */
    public static String words(EObject owner, List<? extends EStructuralFeature> rest, Labels labels) {
        String first = words(owner, rest.getFirst(), labels);
        return rest.size() == 1 ? first : first + Labels.STEP + labels.labelOfPath(rest.subList(1, rest.size()));
    }

    /** {@return the objects that a reference leads to, whether it takes one or many} */
    @SuppressWarnings("unchecked") // a reference of the model holds objects of the model
    static List<EObject> parts(EObject owner, EReference reference) {
        Object value = owner.eGet(reference);
        return reference.isMany() ? (List<EObject>) value : value == null ? List.of() : List.of((EObject) value);
    }

    /** A feature, and for an element of a list its id or number. */
    private record Step(EStructuralFeature feature, Optional<String> which) {
    }

    /** Reads a key against the model: every step but the last leads to one part. */
    private static Optional<List<Step>> steps(String key) {
        List<Step> steps = new ArrayList<>();
        EClass type = GarboardPackage.Literals.COMMISSIONING_RECORD;
        Matcher written = STEP.matcher(key);
        int at = 0;
        while (at < key.length()) {
            boolean here = written.find(at) && written.start() == at;
            EStructuralFeature feature = here ? type.getEStructuralFeature(written.group(1)) : null;
            if (feature == null || !steps.isEmpty() && !leadsToPart(steps.getLast())) {
                return Optional.empty();
            }
            steps.add(new Step(feature, Optional.ofNullable(written.group(2))));
            type = feature instanceof EReference reference ? reference.getEReferenceType() : type;
            at = written.end();
        }
        return steps.isEmpty() || key.endsWith(".") ? Optional.empty() : Optional.of(steps);
    }

    private static boolean leadsToPart(Step step) {
        return step.feature() instanceof EReference reference && reference.isContainment() && reference.isMany() == step.which().isPresent();
    }

    private static Optional<EObject> walk(EObject from, List<Step> steps, boolean create) {
        Optional<EObject> part = Optional.of(from);
        for (int i = 0; i < steps.size() && part.isPresent(); i++) {
            // nothing is created on the way to an element of a list, for the list below a new part is empty
            boolean createHere = create && steps.stream().skip(i).allMatch(step -> step.which().isEmpty());
            part = below(part.get(), steps.get(i), createHere);
        }
        return part;
    }

    private static Optional<EObject> below(EObject owner, Step step, boolean create) {
        EReference reference = (EReference) step.feature();
        List<EObject> parts = parts(owner, reference);
        if (step.which().isPresent()) {
            return element(parts, step.which().get());
        }
        if (parts.isEmpty() && create) {
            EObject part = EcoreUtil.create(reference.getEReferenceType());
            owner.eSet(reference, part);
            return Optional.of(part);
        }
        return parts.stream().findFirst();
    }

    private static Optional<EObject> element(List<EObject> parts, String which) {
        if (NUMBER.matcher(which).matches()) {
            int number = Integer.parseInt(which);
            return number < parts.size() ? Optional.of(parts.get(number)) : Optional.empty();
        }
        return parts.stream().filter(part -> part instanceof Item item && which.equals(item.getId())).findFirst();
    }

    private static String name(EObject part, EObject owner, EReference reference) {
        return part instanceof Item item && item.getId() != null ? item.getId()
            : String.valueOf(parts(owner, reference).indexOf(part));
    }

    private static String called(EObject part, EObject owner, EReference reference, Labels labels) {
        String id = part instanceof Item item && item.getId() != null ? item.getId()
            : labels.label(part.eClass()) + " " + (parts(owner, reference).indexOf(part) + 1);
        EStructuralFeature name = part.eClass().getEStructuralFeature("name");
        return name != null && part.eIsSet(name) ? id + " (" + part.eGet(name) + ")" : id;
    }
}
