// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.GarboardPackage;

/**
 * One rule of practice, declared: what it looks at, what it needs, when it applies, the comparison, where it comes from,
 * how grave a shortfall is and what would mend it. Stateless and immutable; {@link Judge} evaluates it.
 *
 * @param <S> the class of the objects it judges
 */
public final class Check<S extends EObject> {

    private static final Pattern ID = Pattern.compile("[A-Z][A-Z0-9]*(-[A-Z0-9]+)+");

    /** An input, and when it is needed. */
    record Need<S extends EObject>(Predicate<Situation<S>> when, boolean always, FeaturePath path) {
    }

    private final String id;
    private final Class<S> subject;
    private final EClass subjectType;
    private final Predicate<S> which;
    private final String title;
    private final String why;
    private final Basis basis;
    private final Gravity gravity;
    private final String limitInWords;
    private final String remedyInWords;
    private final List<Condition<? super S>> conditions;
    private final List<Need<S>> needs;
    private final List<FeaturePath> uses;
    private final Function<Situation<S>, Comparison> comparison;
    private final Function<Situation<S>, Optional<Remedy>> remedy;
    private final boolean remedyAimsAtLimit;

    private Check(Builder<S> builder) {
        this.id = builder.id;
        this.subject = builder.subject;
        this.subjectType = builder.subjectType;
        this.which = builder.which;
        this.title = required(builder.title, "title");
        this.why = required(builder.why, "why");
        this.basis = required(builder.basis, "basis");
        this.gravity = required(builder.gravity, "gravity");
        this.limitInWords = required(builder.limitInWords, "limit");
        this.remedyInWords = required(builder.remedyInWords, "remedy");
        this.conditions = List.copyOf(builder.conditions);
        this.needs = List.copyOf(builder.needs);
        this.uses = List.copyOf(builder.uses);
        this.comparison = required(builder.comparison, "holds");
        this.remedy = builder.remedy;
        this.remedyAimsAtLimit = builder.remedyAimsAtLimit;
        if (needs.isEmpty()) {
            throw new IllegalStateException(id + ": a check needs at least one input");
        }
    }

    private <T> T required(T value, String what) {
        if (value == null || value instanceof String text && text.isBlank()) {
            throw new IllegalStateException(id + ": the declaration lacks " + what);
        }
        return value;
    }

    /**
     * Starts the declaration of a check.
     *
     * @param id for ever: what it is about, in capitals with hyphens
     * @param subject class of the objects that it judges, each by itself
     */
    public static <S extends EObject> Builder<S> check(String id, Class<S> subject) {
        return new Builder<>(id, subject);
    }

    public String id() {
        return id;
    }

    /** The good condition, in one line. */
    public String title() {
        return title;
    }

    /** What happens when it does not hold, in one or two sentences. */
    public String why() {
        return why;
    }

    public Basis basis() {
        return basis;
    }

    public Gravity gravity() {
        return gravity;
    }

    /** The limit as the catalogue prints it, with units in both systems where people use both. */
    public String limitInWords() {
        return limitInWords;
    }

    /** The way out in general; a verdict carries the computed one. */
    public String remedyInWords() {
        return remedyInWords;
    }

    public EClass subjectType() {
        return subjectType;
    }

    /** When it applies, as the catalogue prints it. */
    public List<String> appliesInWords() {
        return conditions.stream().map(Condition::inWords).toList();
    }

    /** The inputs without which it cannot tell. */
    public List<FeaturePath> needs() {
        return needs.stream().map(Need::path).toList();
    }

    /** All its inputs: what its conditions ask for, what it needs, and what it takes into account where it is entered. */
    public List<FeaturePath> inputs() {
        var inputs = new ArrayList<FeaturePath>();
        conditions.forEach(condition -> {
            inputs.addAll(condition.needs());
            inputs.addAll(condition.uses());
        });
        needs.forEach(need -> inputs.add(need.path()));
        inputs.addAll(uses);
        return inputs;
    }

    /** Every feature that can change its verdict: an edit of any other feature leaves it as it is. */
    public Set<EStructuralFeature> reads() {
        var features = new LinkedHashSet<EStructuralFeature>();
        inputs().forEach(path -> features.addAll(path.features()));
        return features;
    }

    boolean judges(EObject object) {
        return subject.isInstance(object) && which.test(subject.cast(object));
    }

    S cast(EObject object) {
        return subject.cast(object);
    }

    List<Condition<? super S>> conditions() {
        return conditions;
    }

    List<Need<S>> conditionalNeeds() {
        return needs;
    }

    Comparison compare(Situation<S> situation) {
        return comparison.apply(situation);
    }

    Optional<Remedy> remedyFor(Situation<S> situation) {
        return remedy.apply(situation);
    }

    /** Whether the computed way out leads to the limit and not beyond it. */
    boolean remedyAimsAtLimit() {
        return remedyAimsAtLimit;
    }

    @Override
    public String toString() {
        return id;
    }

    /** Collects the parts of a declaration; {@link #build()} refuses an incomplete one. */
    public static final class Builder<S extends EObject> {

        private final String id;
        private final Class<S> subject;
        private final EClass subjectType;
        private Predicate<S> which = object -> true;
        private String title;
        private String why;
        private Basis basis;
        private Gravity gravity;
        private String limitInWords;
        private String remedyInWords;
        private final List<Condition<? super S>> conditions = new ArrayList<>();
        private final List<Need<S>> needs = new ArrayList<>();
        private final List<FeaturePath> uses = new ArrayList<>();
        private Function<Situation<S>, Comparison> comparison;
        private Function<Situation<S>, Optional<Remedy>> remedy = situation -> Optional.empty();
        private boolean remedyAimsAtLimit;

        private Builder(String id, Class<S> subject) {
            if (!ID.matcher(id).matches()) {
                throw new IllegalArgumentException("A check's id is words in capitals with hyphens, not \"" + id + "\"");
            }
            this.id = id;
            this.subject = subject;
            if (!(GarboardPackage.eINSTANCE.getEClassifier(subject.getSimpleName()) instanceof EClass type)) {
                throw new IllegalArgumentException(id + ": " + subject.getSimpleName() + " is no class of the model");
            }
            this.subjectType = type;
        }

        /** Narrows the subjects, for example to cranking cables among all cable runs. Reads only features in {@link #uses}. */
        public Builder<S> among(Predicate<S> which, FeaturePath... decidedBy) {
            this.which = which;
            return uses(decidedBy);
        }

        public Builder<S> title(String goodCondition) {
            this.title = goodCondition;
            return this;
        }

        public Builder<S> why(String consequence) {
            this.why = consequence;
            return this;
        }

        public Builder<S> basis(Basis basis) {
            this.basis = basis;
            return this;
        }

        public Builder<S> gravity(Gravity gravity) {
            this.gravity = gravity;
            return this;
        }

        public Builder<S> limit(String inWords) {
            this.limitInWords = inWords;
            return this;
        }

        /** Several conditions must all hold. */
        public Builder<S> applies(Condition<? super S> condition) {
            conditions.add(condition);
            return this;
        }

        public Builder<S> needs(EStructuralFeature... features) {
            for (EStructuralFeature feature : features) {
                needs(FeaturePath.path(feature));
            }
            return this;
        }

        public Builder<S> needs(FeaturePath... paths) {
            for (FeaturePath path : paths) {
                needs.add(new Need<>(situation -> true, true, path));
            }
            return this;
        }

        /** Inputs needed only when the predicate holds; it may read only inputs that are needed before or {@link #uses}d. */
        public Builder<S> needsWhen(Predicate<Situation<S>> when, FeaturePath... paths) {
            for (FeaturePath path : paths) {
                needs.add(new Need<>(when, false, path));
            }
            return this;
        }

        /** Inputs that it takes into account when they are entered, such as a maker's limit. */
        public Builder<S> uses(FeaturePath... paths) {
            uses.addAll(List.of(paths));
            return this;
        }

        public Builder<S> uses(EStructuralFeature... features) {
            for (EStructuralFeature feature : features) {
                uses.add(FeaturePath.path(feature));
            }
            return this;
        }

        /** The comparison; called only when every needed input is entered. */
        public Builder<S> holds(Function<Situation<S>, Comparison> comparison) {
            this.comparison = comparison;
            return this;
        }

        /** A way out that is the same for everybody. */
        public Builder<S> remedy(String inWords) {
            this.remedyInWords = inWords;
            this.remedy = situation -> Optional.of(Remedy.of(inWords));
            return this;
        }

        /** A way out computed from the situation, and how the catalogue describes it. */
        public Builder<S> remedy(String inWords, Function<Situation<S>, Optional<Remedy>> computed) {
            this.remedyInWords = inWords;
            this.remedy = situation -> computed.apply(situation).or(() -> Optional.of(Remedy.of(inWords)));
            this.remedyAimsAtLimit = true;
            return this;
        }

        /**
         * A way out computed for the worst of the accuracy, so that it is told of a borderline figure on the right side too. Any other
         * computed one aims at the limit, which such a figure has reached already: there it is told to measure again.
         */
        public Builder<S> remedyAtTheWorst(String inWords, Function<Situation<S>, Optional<Remedy>> computed) {
            remedy(inWords, computed);
            this.remedyAimsAtLimit = false;
            return this;
        }

        public Check<S> build() {
            return new Check<>(this);
        }
    }
}
