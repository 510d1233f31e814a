// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.checks.Check;
import garboard.checks.Evaluation;
import garboard.checks.FeaturePath;
import garboard.checks.Standing;
import garboard.checks.Verdict;

/** Which verdicts speak of which field: those of checks that read it, on a subject that the field can belong to. */
public final class FieldStandings {

    private static final Comparator<Verdict> WORST_FIRST = Comparator.comparing(Verdict::standing)
        .thenComparing(verdict -> verdict.check().gravity());

    private final Map<EStructuralFeature, List<Verdict>> byFeature = new HashMap<>();
    private final Map<EObject, List<Verdict>> bySubject = new HashMap<>();

    private final Map<Check<?>, Inputs> inputs;

    private FieldStandings(Evaluation evaluation, Map<Check<?>, Inputs> inputs) {
        this.inputs = inputs;
        for (Verdict verdict : evaluation.verdicts()) {
            for (EStructuralFeature feature : inputs.computeIfAbsent(verdict.check(), Inputs::of).features()) {
                byFeature.computeIfAbsent(feature, none -> new ArrayList<>()).add(verdict);
            }
            for (EObject part = verdict.subject(); part != null; part = part.eContainer()) {
                bySubject.computeIfAbsent(part, none -> new ArrayList<>()).add(verdict);
            }
        }
    }

    /** @param inputs those of each check, as far as they were asked for before: they are gathered anew each time, which takes longer than all else */
    static FieldStandings of(Evaluation evaluation, Map<Check<?>, Inputs> inputs) {
        return new FieldStandings(evaluation, inputs);
    }

    /** What a check reads. @param paths each as features from the check's subject or a part that the record has once */
    record Inputs(List<List<EStructuralFeature>> paths, Set<EStructuralFeature> features) {

        static Inputs of(Check<?> check) {
            return new Inputs(check.inputs().stream().map(FeaturePath::features).toList(), check.reads());
        }

        /** {@return whether one of them leads to a field, or to a part that it is in} @param way from the record to the field */
        boolean leadTo(List<EStructuralFeature> way) {
            return paths.stream().anyMatch(path -> {
                int at = Collections.indexOfSubList(way, path);
                return at >= 0 && (at + path.size() == way.size() || path.getLast() instanceof EReference);
            });
        }
    }

    /**
     * {@return the verdicts that what is entered in a field decides, worst first} A check that lacks something is among those of the
     * fields that it lacks, not of the fields that it has.
     */
    public List<Verdict> concerning(Field field) {
        List<Verdict> readers = byFeature.getOrDefault(field.attribute(), List.of());
        if (readers.isEmpty()) {
            return List.of();
        }
        String key = field.key();
        boolean empty = field.value().isEmpty();
        List<EStructuralFeature> way = way(field);
        return readers.stream().filter(verdict -> inputs.get(verdict.check()).leadTo(way) && canBelongTo(field, verdict.subject()))
            .filter(verdict -> verdict.standing() != Standing.CANNOT_TELL || empty && isMissing(key, verdict)).sorted(WORST_FIRST).toList();
    }

    /**
     * {@return those of the verdicts concerning a field that are for this field to mend, worst first} A check on the raw-water intake reads
     * the vessel's speed, but a shortfall there is no reproach to the speed: only the verdicts on what is entered at the field's own stop
     * count, and those that lack the field. Of the fields of an item only the verdicts on that item count: that the cranking cables drop too
     * much together is no reproach to the cable of the feed pump.
     */
    public List<Verdict> at(Field field) {
        Stop here = Stop.of(field.key());
        Optional<EObject> item = item(field.nearest());
        return concerning(field).stream().filter(verdict -> verdict.standing() == Standing.CANNOT_TELL
            || (item.isPresent() ? EcoreUtil.isAncestor(item.get(), verdict.subject())
                : verdict.subjectKey().isEmpty() || Stop.of(verdict.subjectKey()) == here)).toList();
    }

    /** {@return the innermost item of a list that a part is or is in} */
    private static Optional<EObject> item(EObject part) {
        EObject at = part;
        while (at.eContainer() != null && !at.eContainmentFeature().isMany()) {
            at = at.eContainer();
        }
        return at.eContainer() == null ? Optional.empty() : Optional.of(at);
    }

    /** {@return the worst standing of the verdicts at a field; nothing where there is none} */
    public Optional<Standing> worst(Field field) {
        return at(field).stream().findFirst().map(Verdict::standing).filter(standing -> standing != Standing.DOES_NOT_APPLY);
    }

    /**
     * {@return whether a field need not be filled in for this installation} That is so when checks read it and none of them applies, as
     * with the answers on a gasoline set when it burns diesel. A field that no check reads is none of them: it may be wanted for the record.
     */
    public boolean isBeside(Field field) {
        List<Verdict> readers = byFeature.getOrDefault(field.attribute(), List.of()).stream()
            .filter(verdict -> inputs.get(verdict.check()).leadTo(way(field)) && canBelongTo(field, verdict.subject())).toList();
        return !readers.isEmpty() && readers.stream().allMatch(verdict -> verdict.standing() == Standing.DOES_NOT_APPLY);
    }

    /** {@return the worst standing among the verdicts on a part and all below it; nothing where no check speaks of it} */
    public Optional<Standing> worstOf(EObject part) {
        return bySubject.getOrDefault(part, List.of()).stream().filter(verdict -> verdict.standing() != Standing.DOES_NOT_APPLY)
            .min(WORST_FIRST).map(Verdict::standing);
    }

    /** The features from the record to a field. */
    private static List<EStructuralFeature> way(Field field) {
        List<EStructuralFeature> way = new ArrayList<>(field.path());
        for (EObject at = field.anchor(); at.eContainer() != null; at = at.eContainer()) {
            way.addFirst(at.eContainmentFeature());
        }
        return way;
    }

    private static boolean isMissing(String key, Verdict verdict) {
        return verdict.missing().stream().anyMatch(missing -> key.equals(missing.key()) || key.startsWith(missing.key() + "."));
    }

    /** Not when the field is one of a sibling of the subject, or of another part of the same class. */
    private static boolean canBelongTo(Field field, EObject subject) {
        EObject place = field.nearest();
        if (place != subject && place.eClass() == subject.eClass()) {
            return false;
        }
        for (EObject above = place; above.eContainer() != null; above = above.eContainer()) {
            for (EObject other = subject; other.eContainer() != null; other = other.eContainer()) {
                if (above != other && above.eContainmentFeature().isMany() && above.eContainmentFeature() == other.eContainmentFeature()
                        && above.eContainer() == other.eContainer()) {
                    return false;
                }
            }
        }
        return true;
    }
}
