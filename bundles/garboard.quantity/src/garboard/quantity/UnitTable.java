// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import javax.measure.Unit;

/**
 * The units one kind of quantity accepts, the usual ones first. Immutable; each converter is resolved once, when the table is
 * built.
 */
final class UnitTable {

    private static final int UNITS_NAMED_IN_A_MESSAGE = 5;

    private final String kindName;
    private final AcceptedUnit si;
    private final AcceptedUnit shownInSi;
    private final AcceptedUnit shownInUs;
    private final boolean unitMayBeLeftOut;
    private final List<AcceptedUnit> units;
    private final Map<String, AcceptedUnit> exact = new HashMap<>();
    private final Map<String, AcceptedUnit> anyCase = new HashMap<>();

    private UnitTable(Declaration declared) {
        kindName = declared.kindName;
        units = List.copyOf(declared.units.values());
        for (AcceptedUnit unit : units) {
            enter(unit.symbol(), unit);
            unit.spellings().forEach(spelling -> enter(spelling, unit));
        }
        si = named(declared.siSymbol);
        shownInSi = named(declared.shownInSi);
        shownInUs = named(declared.shownInUs);
        unitMayBeLeftOut = declared.unitMayBeLeftOut;
    }

    /** Begins the declaration of a kind's units. */
    static Declaration of(String kindName, String siSymbol, Unit<?> si) {
        return new Declaration(kindName, siSymbol, si);
    }

    String kindName() {
        return kindName;
    }

    AcceptedUnit si() {
        return si;
    }

    AcceptedUnit shownIn(UnitSystem system) {
        return system == UnitSystem.SI ? shownInSi : shownInUs;
    }

    List<AcceptedUnit> units() {
        return units;
    }

    /** {@return whether a number alone is understood, as one in the SI unit} */
    boolean unitMayBeLeftOut() {
        return unitMayBeLeftOut;
    }

    /**
     * {@return the unit typed, nothing when it is none of this kind} The exact symbol goes first, then the same letters in
     * another case; but m and M at the head are milli and mega and never stand for each other.
     */
    Optional<AcceptedUnit> find(String typed) {
        AcceptedUnit asWritten = exact.get(typed);
        if (asWritten != null) {
            return Optional.of(asWritten);
        }
        return Optional.ofNullable(anyCase.get(UnitSpelling.caseless(UnitSpelling.plain(typed))));
    }

    /** {@return why the typed text is no unit of this kind and what would be right} */
    String refusal(String typed) {
        if (typed.isBlank()) {
            return unitWanted();
        }
        String start = typed + " is not a unit of " + kindName + "; ";
        return UnitSpelling.nearest(UnitSpelling.plain(typed), units).map(near -> start + "did you mean " + near.symbol() + "?")
            .orElseGet(() -> start + "use " + usual());
    }

    /** {@return the sentence for a number without a unit} */
    String unitWanted() {
        List<String> examples = shownInSi == shownInUs ? List.of(shownInSi.symbol())
            : List.of(shownInSi.symbol(), shownInUs.symbol());
        return "give a unit, for example " + UnitSpelling.orList(examples);
    }

    private String usual() {
        return UnitSpelling.orList(units.stream().limit(UNITS_NAMED_IN_A_MESSAGE).map(AcceptedUnit::symbol).toList());
    }

    private AcceptedUnit named(String symbol) {
        return find(symbol).orElseThrow(() -> new IllegalArgumentException(kindName + ": " + symbol + " is not declared"));
    }

    private void enter(String spelling, AcceptedUnit unit) {
        AcceptedUnit sameText = exact.put(spelling, unit);
        AcceptedUnit sameLetters = anyCase.put(UnitSpelling.caseless(UnitSpelling.plain(spelling)), unit);
        if (sameText != null || sameLetters != null && sameLetters != unit) {
            throw new IllegalArgumentException(kindName + ": " + spelling + " is declared twice");
        }
    }

    /** The declaration of a table, one line a unit. */
    static final class Declaration {

        private final String kindName;
        private final String siSymbol;
        private final Unit<?> si;
        private final Map<String, AcceptedUnit> units = new LinkedHashMap<>();
        private String shownInSi = "";
        private String shownInUs = "";
        private boolean unitMayBeLeftOut;

        private Declaration(String kindName, String siSymbol, Unit<?> si) {
            this.kindName = kindName;
            this.siSymbol = siSymbol;
            this.si = si;
        }

        /** Adds a unit; the order is the order in which messages name them. */
        Declaration unit(String symbol, Unit<?> unit, String... spellings) {
            return add(new AcceptedUnit(symbol, List.of(spellings), AffineConversion.between(unit, si)));
        }

        /** Adds degrees of slope, which no linear converter can express. */
        Declaration degreesOfSlope(String symbol, String... spellings) {
            return add(new AcceptedUnit(symbol, List.of(spellings), new TangentConversion()));
        }

        /** Lets a number stand alone, for pure numbers. */
        Declaration unitMayBeLeftOut() {
            unitMayBeLeftOut = true;
            return this;
        }

        /** Names the customary unit of each system and ends the declaration. */
        UnitTable shownIn(String siSystem, String usSystem) {
            shownInSi = siSystem;
            shownInUs = usSystem;
            return new UnitTable(this);
        }

        private Declaration add(AcceptedUnit unit) {
            if (units.put(unit.symbol(), unit) != null) {
                throw new IllegalArgumentException(kindName + ": " + unit.symbol() + " is declared twice");
            }
            return this;
        }
    }
}
