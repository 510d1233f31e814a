// SPDX-License-Identifier: EPL-2.0
package garboard.physics.calculation;

import java.util.Map;

/** The arguments of one evaluation, read and typed. */
public final class Inputs {

    private final Map<Parameter<?>, Object> values;

    Inputs(Map<Parameter<?>, Object> values) {
        this.values = Map.copyOf(values);
    }

    /** The value of one of the calculation's own parameters. */
    @SuppressWarnings("unchecked") // a value got in only through its parameter's reader
    public <T> T get(Parameter<T> parameter) {
        Object value = values.get(parameter);
        if (value == null) {
            throw new IllegalStateException("The calculation does not declare the parameter " + parameter.name());
        }
        return (T) value;
    }
}
