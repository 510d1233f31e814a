// SPDX-License-Identifier: EPL-2.0
package garboard.physics.calculation;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import garboard.physics.OutOfRangeException;
import garboard.physics.Source;

/**
 * One calculation under a name, for a person who asks for it: what it takes, how it reckons, where that comes from.
 * Made by {@link #named}, then the steps of {@link Draft} in any order, then {@link Draft#answers}.
 */
public final class Calculation {

    private final Draft draft;
    private final Function<Inputs, Answer> function;

    private Calculation(Draft draft, Function<Inputs, Answer> function) {
        this.draft = draft;
        this.function = function;
    }

    /** Starts a calculation; the name is lower case with hyphens, such as {@code heeled-height}. */
    public static Draft named(String name, String title) {
        return new Draft(name, title, "", List.of(), "", "", Optional.empty());
    }

    public String name() {
        return draft.name;
    }

    public String title() {
        return draft.title;
    }

    /** One line: what one learns from it. */
    public String explanation() {
        return draft.explanation;
    }

    public List<Parameter<?>> parameters() {
        return draft.parameters;
    }

    /** The formula as plain text. */
    public String formula() {
        return draft.formula;
    }

    /** The range it holds for, and what happens outside. */
    public String validity() {
        return draft.validity;
    }

    public Source source() {
        return draft.source.orElseThrow();
    }

    /**
     * Reads the arguments and reckons.
     *
     * @throws CalculationException naming the argument that is unknown, missing, unreadable or out of range
     */
    public Answer evaluate(Map<String, String> arguments) throws CalculationException {
        for (String given : arguments.keySet()) {
            if (parameters().stream().noneMatch(parameter -> parameter.name().equals(given))) {
                throw new CalculationException(given, name() + " takes no " + given + "; it takes "
                        + parameters().stream().map(Parameter::name).collect(Collectors.joining(", ")));
            }
        }
        Map<Parameter<?>, Object> values = new HashMap<>();
        for (Parameter<?> parameter : parameters()) {
            values.put(parameter, parameter.read(Optional.ofNullable(arguments.get(parameter.name()))));
        }
        try {
            return function.apply(new Inputs(values));
        } catch (OutOfRangeException out) {
            throw new CalculationException(out.argument().replace(' ', '-'), out.getMessage(), out);
        } catch (IllegalArgumentException refused) {
            // A quantity refuses figures such as infinity: the arguments were each good, but not together.
            throw new CalculationException(name(), name() + " has no answer for these arguments: " + refused.getMessage(), refused);
        }
    }

    @Override
    public String toString() {
        return name();
    }

    /** A calculation in the making. */
    public record Draft(String name, String title, String explanation, List<Parameter<?>> parameters, String formula, String validity,
            Optional<Source> source) {

        /** One line: what one learns from it. */
        public Draft explained(String words) {
            return new Draft(name, title, words, parameters, formula, validity, source);
        }

        /** Its arguments, in the order of reading. */
        public Draft takes(Parameter<?>... taken) {
            return new Draft(name, title, explanation, List.of(taken), formula, validity, source);
        }

        /** The formula as plain text. */
        public Draft by(String text) {
            return new Draft(name, title, explanation, parameters, text, validity, source);
        }

        /** The range it holds for, and what happens outside. */
        public Draft validFor(String words) {
            return new Draft(name, title, explanation, parameters, formula, words, source);
        }

        public Draft from(Source cited) {
            return new Draft(name, title, explanation, parameters, formula, validity, Optional.of(cited));
        }

        /** Ends the making. Nothing may be left out, and no two arguments may share a name. */
        public Calculation answers(Function<Inputs, Answer> function) {
            Map<String, Parameter<?>> byName = new LinkedHashMap<>();
            parameters.forEach(parameter -> byName.put(parameter.name(), parameter));
            if (explanation.isBlank() || formula.isBlank() || validity.isBlank() || source.isEmpty() || byName.isEmpty()) {
                throw new IllegalStateException(name + ": explanation, arguments, formula, validity and source belong to every calculation");
            }
            if (byName.size() != parameters.size()) {
                throw new IllegalStateException(name + ": two arguments share a name");
            }
            return new Calculation(this, function);
        }
    }
}
