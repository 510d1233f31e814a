// SPDX-License-Identifier: EPL-2.0
package garboard.model.testing;

import java.util.Random;

import garboard.model.CommissioningRecord;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** The random records as jqwik knows them. A failing record shrinks towards one with less entered. */
public final class RecordArbitraries {

    private RecordArbitraries() {
    }

    /** {@return whole records, from empty ones to ones with everything entered} */
    public static Arbitrary<CommissioningRecord> records() {
        return Combinators.combine(Arbitraries.integers().between(0, 100), Arbitraries.longs().between(0, Long.MAX_VALUE).dontShrink())
            .as((perCent, seed) -> new RandomRecords(new Random(seed), perCent).record());
    }

    /** {@return texts with all that XML, spreadsheets and terminals stumble over} */
    public static Arbitrary<String> texts() {
        return Arbitraries.longs().map(seed -> new RandomValues(new Random(seed)).text());
    }
}
