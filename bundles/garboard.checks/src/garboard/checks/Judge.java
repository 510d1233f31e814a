// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.model.CommissioningRecord;
import garboard.model.Labels;
import garboard.model.RecordPath;
import garboard.quantity.ImplausibleInput;
import garboard.quantity.Quantity;

/** Evaluates one check on one subject. The only place where a comparison becomes a verdict. */
final class Judge {

    private final Containment containment;
    private final Labels labels;

    Judge(Containment containment, Labels labels) {
        this.containment = containment;
        this.labels = labels;
    }

    /** The verdict of a check on a subject; never throws for a fault in the check. */
    <S extends EObject> Verdict judge(Check<S> check, EObject object, CommissioningRecord record, LocalDate today) {
        var situation = new Situation<>(check.cast(object), record, today);
        try {
            return judge(check, situation);
        } catch (RuntimeException fault) {
            // A fault in one check must neither stop the others nor look like a pass.
            return fault instanceof ImplausibleInput input ? implausible(check, object, input) : broke(check, object, fault);
        }
    }

    /** An entry that cannot be right tells no more than one that is missing. */
    private Verdict implausible(Check<?> check, EObject object, ImplausibleInput input) {
        return verdict(check, object, Standing.CANNOT_TELL, "An entry cannot be right: " + input.getMessage(), Comparing.NOTHING,
                Optional.empty(), List.of(), Optional.empty());
    }

    Verdict broke(Check<?> check, EObject object, RuntimeException fault) {
        String what = fault.getMessage() == null ? fault.getClass().getSimpleName() : fault.getMessage();
        return verdict(check, object, Standing.CHECK_BROKE, "This check could not be carried out: " + what, Comparing.NOTHING,
                Optional.empty(), List.of(), Optional.of(fault));
    }

    /** The verdict for a subject that is not in the record at all: not entered, unless the check would not apply to any. */
    <S extends EObject> Verdict subjectNotEntered(Check<S> check, Missing missing, CommissioningRecord record, LocalDate today) {
        S blank = check.cast(EcoreUtil.create(check.subjectType()));
        var situation = new Situation<>(blank, record, today);
        for (Condition<? super S> condition : check.conditions()) {
            if (ruledOut(condition, situation)) {
                return verdict(check, missing.owner(), Standing.DOES_NOT_APPLY, condition.reasonIfNot(), Comparing.NOTHING,
                        Optional.empty(), List.of(), Optional.empty());
            }
        }
        return verdict(check, missing.owner(), Standing.CANNOT_TELL, "Not entered: " + missing.label(), Comparing.NOTHING,
                Optional.empty(), List.of(missing), Optional.empty());
    }

    private <S extends EObject> boolean ruledOut(Condition<? super S> condition, Situation<S> situation) {
        try {
            return missing(condition.needs(), situation).isEmpty() && !condition.test().test(situation);
        } catch (RuntimeException needsTheSubject) {
            // A condition may look around its subject, which here stands nowhere: then it is undecided.
            return false;
        }
    }

    private <S extends EObject> Verdict judge(Check<S> check, Situation<S> situation) {
        S subject = situation.subject();
        var missing = new LinkedHashMap<String, Missing>();
        for (Condition<? super S> condition : check.conditions()) {
            Map<String, Missing> undecided = missing(condition.needs(), situation);
            if (!undecided.isEmpty()) {
                missing.putAll(undecided);
            } else if (!condition.test().test(situation)) {
                return verdict(check, subject, Standing.DOES_NOT_APPLY, condition.reasonIfNot(), Comparing.NOTHING,
                        Optional.empty(), List.of(), Optional.empty());
            }
        }
        boolean decidable = missing.isEmpty();
        for (Check.Need<S> need : check.conditionalNeeds()) {
            // All that is missing is listed together, so that a person enters it in one go. A condition may read what is needed before
            // it in any case, so it is asked only when that is there.
            if (need.always() || decidable && isAsked(need, situation, missing.isEmpty())) {
                Map<String, Missing> lacking = missing(List.of(need.path()), situation);
                decidable &= !need.always() || lacking.isEmpty();
                missing.putAll(lacking);
            }
        }
        if (!missing.isEmpty()) {
            var list = List.copyOf(missing.values());
            String labels = String.join("; ", list.stream().map(Missing::label).toList());
            return verdict(check, subject, Standing.CANNOT_TELL, "Not entered: " + labels, Comparing.NOTHING,
                    Optional.empty(), list, Optional.empty());
        }
        Comparison comparison = check.compare(situation);
        Comparing compared = Comparing.of(comparison);
        if (check.basis().isRegulation() && compared.limit().filter(Limit::fromMaker).isPresent()) {
            throw new IllegalStateException("a maker's limit cannot replace a regulation");
        }
        return verdict(check, subject, compared.standing(), comparison.found(), compared, remedy(check, situation, compared), List.of(),
                Optional.empty());
    }

    private static <S extends EObject> Optional<Remedy> remedy(Check<S> check, Situation<S> situation, Comparing compared) {
        if (compared.standing() == Standing.MEETS) {
            return Optional.empty();
        }
        return compared.inside() && check.remedyAimsAtLimit() ? Optional.of(Remedy.of("Measure again, more closely: the figure entered is on the "
                + "right side, but its accuracy reaches over the limit. Where it stays so close: " + check.remedyInWords())) : check.remedyFor(situation);
    }

    private <S extends EObject> boolean isAsked(Check.Need<S> need, Situation<S> situation, boolean nothingMissing) {
        try {
            return need.when().test(situation);
        } catch (RuntimeException readsWhatIsMissing) {
            // The predicate may read an input that is needed on an earlier condition: without it the need is undecided.
            if (nothingMissing) {
                throw readsWhatIsMissing;
            }
            return false;
        }
    }

    private Map<String, Missing> missing(List<FeaturePath> paths, Situation<?> situation) {
        var missing = new LinkedHashMap<String, Missing>();
        for (FeaturePath path : paths) {
            collectMissing(path, situation, missing);
        }
        return missing;
    }

    private void collectMissing(FeaturePath path, Situation<?> situation, Map<String, Missing> into) {
        EObject start = situation.subject();
        var prefix = new ArrayList<EStructuralFeature>();
        if (!path.first().getEContainingClass().isSuperTypeOf(start.eClass())) {
            start = situation.record();
            for (EReference reference : containment.onlySingleChain(path.first().getEContainingClass())) {
                if (!prefix.isEmpty() || !start.eIsSet(reference)) {
                    prefix.add(reference);
                } else {
                    start = (EObject) start.eGet(reference);
                }
            }
        }
        if (!prefix.isEmpty()) {
            prefix.addAll(path.features());
            add(start, prefix, into);
            return;
        }
        path.walk(start, new FeaturePath.Visitor() {
            @Override
            public void entered(EObject owner, EStructuralFeature feature) {
                // nothing to say: it is there
            }

            @Override
            public void missing(EObject owner, List<EStructuralFeature> rest) {
                add(owner, rest, into);
            }
        });
    }

    private void add(EObject owner, List<EStructuralFeature> rest, Map<String, Missing> into) {
        Missing missing = missingPart(owner, rest);
        into.putIfAbsent(missing.key(), missing);
    }

    /** What is missing below an existing part. */
    Missing missingPart(EObject owner, List<? extends EStructuralFeature> rest) {
        return new Missing(owner, rest.getFirst(), RecordPath.key(owner, rest), RecordPath.words(owner, rest, labels));
    }

    private Verdict verdict(Check<?> check, EObject subject, Standing standing, String sentence, Comparing compared,
            Optional<Remedy> remedy, List<Missing> missing, Optional<RuntimeException> broke) {
        return new Verdict(check, subject, RecordPath.key(subject), RecordPath.words(subject, labels), standing,
                sentence, compared.measured(), compared.limit(), compared.margin(), remedy, missing, Optional.empty(), broke);
    }

    /** A comparison decided; inside when the figure by itself, its accuracy left out of account, is on the right side. */
    private record Comparing(Standing standing, Optional<Quantity<?>> measured, Optional<Limit<?>> limit,
            Optional<Margin> margin, boolean inside) {

        static final Comparing NOTHING = new Comparing(Standing.CANNOT_TELL, Optional.empty(), Optional.empty(),
                Optional.empty(), false);

        static Comparing of(Comparison comparison) {
            return switch (comparison) {
                case Comparison.AtLeast<?> c -> above(c);
                case Comparison.MoreThan<?> c -> more(c);
                case Comparison.AtMost<?> c -> below(c);
                case Comparison.Between<?> c -> between(c);
                case Comparison.Undecided c -> NOTHING;
                case Comparison.Holds c -> new Comparing(c.holds() ? Standing.MEETS : Standing.FALLS_SHORT, Optional.empty(),
                        Optional.empty(), Optional.empty(), c.holds());
            };
        }

        private static <Q extends Quantity<Q>> Comparing above(Comparison.AtLeast<Q> c) {
            return decide(c.measured(), c.limit(), c.measured().differenceFrom(c.limit().value()), false);
        }

        private static <Q extends Quantity<Q>> Comparing more(Comparison.MoreThan<Q> c) {
            return decide(c.measured(), c.limit(), c.measured().differenceFrom(c.limit().value()), true);
        }

        private static <Q extends Quantity<Q>> Comparing below(Comparison.AtMost<Q> c) {
            return decide(c.measured(), c.limit(), c.limit().value().differenceFrom(c.measured()), false);
        }

        private static <Q extends Quantity<Q>> Comparing between(Comparison.Between<Q> c) {
            Quantity<?> overLow = c.measured().differenceFrom(c.low().value());
            Quantity<?> underHigh = c.high().value().differenceFrom(c.measured());
            // the nearer limit is the one that the margin is told from
            return overLow.si() <= underHigh.si() ? decide(c.measured(), c.low(), overLow, false)
                    : decide(c.measured(), c.high(), underHigh, false);
        }

        private static <Q extends Quantity<Q>> Comparing decide(Q measured, Limit<Q> limit, Quantity<?> distance, boolean strict) {
            double inside = distance.si();
            // Binary rounding of decimal inputs must not turn "exactly at the limit" into a shortfall.
            double size = Math.max(Math.abs(measured.si()), Math.abs(limit.value().si()));
            if (Math.abs(inside) <= 1e-9 * size) {
                inside = 0;
            }
            double uncertainty = measured.accuracySi().orElse(0);
            boolean right = inside > 0 || inside == 0 && !strict;
            Standing standing = Math.abs(inside) < uncertainty ? Standing.BORDERLINE : right ? Standing.MEETS : Standing.FALLS_SHORT;
            double limitSi = limit.value().si();
            boolean hasNaturalZero = distance.kind().equals(measured.kind());
            OptionalDouble perCent = limitSi == 0 || !hasNaturalZero ? OptionalDouble.empty()
                    : OptionalDouble.of(100 * distance.si() / Math.abs(limitSi));
            return new Comparing(standing, Optional.of(measured), Optional.of(limit),
                    Optional.of(new Margin(distance, perCent)), right);
        }
    }
}
