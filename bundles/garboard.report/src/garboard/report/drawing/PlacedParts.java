// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__EXHAUST;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__FUEL_SUPPLY;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__RAW_WATER;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage.Literals;
import garboard.model.Point;
import garboard.report.drawing.PlacedPart.Circuit;

/** The parts of a record that a drawing shows, each circuit in the order of flow. */
final class PlacedParts {

    static final String SIPHON_BREAK = "Siphon break, vent seat";
    static final String CREST = "Exhaust crest";
    static final String OUTLET = "Exhaust outlet";
    static final String DRY_CREST = "Dry riser crest";

    /** Where a part's place stands in the record. */
    private record Entry(String name, Circuit circuit, List<EReference> way) {
        static Entry of(String name, Circuit circuit, EReference... way) {
            return new Entry(name, circuit, List.of(way));
        }
    }

    private static final List<Entry> ENTRIES = List.of(
        Entry.of("Fuel tank, top", Circuit.FUEL, COMMISSIONING_RECORD__FUEL_SUPPLY, Literals.FUEL_SUPPLY__TANK, Literals.FUEL_TANK__TOP),
        Entry.of("Fuel separator", Circuit.FUEL, COMMISSIONING_RECORD__FUEL_SUPPLY, Literals.FUEL_SUPPLY__SEPARATOR,
            Literals.FUEL_SEPARATOR__POSITION),
        Entry.of("Fuel pump", Circuit.FUEL, COMMISSIONING_RECORD__FUEL_SUPPLY, Literals.FUEL_SUPPLY__PUMP_POSITION),
        Entry.of("Hull pick-up", Circuit.RAW_WATER, COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__PICK_UP,
            Literals.HULL_PICK_UP__POSITION),
        Entry.of("Strainer", Circuit.RAW_WATER, COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__STRAINER,
            Literals.WATER_STRAINER__POSITION),
        Entry.of("Raw-water pump", Circuit.RAW_WATER, COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__PUMP,
            Literals.WATER_PUMP__POSITION),
        Entry.of(SIPHON_BREAK, Circuit.RAW_WATER, COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__SIPHON_BREAK,
            Literals.SIPHON_BREAK__VENT_SEAT),
        Entry.of("Injection point", Circuit.RAW_WATER, COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__INJECTION),
        Entry.of(DRY_CREST, Circuit.EXHAUST, COMMISSIONING_RECORD__EXHAUST, Literals.EXHAUST_RUN__RISER, Literals.RISER__DRY_CREST_INSIDE),
        Entry.of("Muffler", Circuit.EXHAUST, COMMISSIONING_RECORD__EXHAUST, Literals.EXHAUST_RUN__MUFFLER, Literals.MUFFLER__POSITION),
        Entry.of(CREST, Circuit.EXHAUST, COMMISSIONING_RECORD__EXHAUST, Literals.EXHAUST_RUN__CREST, Literals.EXHAUST_CREST__INSIDE_BOTTOM),
        Entry.of(OUTLET, Circuit.EXHAUST, COMMISSIONING_RECORD__EXHAUST, Literals.EXHAUST_RUN__OUTLET,
            Literals.EXHAUST_OUTLET__INSIDE_BOTTOM));

    private static final List<Standing> TO_BE_MARKED =
        List.of(Standing.CHECK_BROKE, Standing.FALLS_SHORT, Standing.BORDERLINE, Standing.CANNOT_TELL, Standing.ACCEPTED);

    private PlacedParts() {
    }

    static List<PlacedPart> of(CommissioningRecord record, Evaluation evaluation) {
        return ENTRIES.stream().map(entry -> part(entry, record, evaluation)).toList();
    }

    private static PlacedPart part(Entry entry, CommissioningRecord record, Evaluation evaluation) {
        EObject owner = record;
        EObject whole = null;
        for (EReference step : entry.way) {
            whole = owner;
            owner = owner == null ? null : (EObject) owner.eGet(step);
        }
        return new PlacedPart(entry.name, entry.circuit, Optional.ofNullable((Point) owner), worst(entry, whole, owner, evaluation));
    }

    private static Optional<Verdict> worst(Entry entry, EObject whole, EObject point, Evaluation evaluation) {
        return evaluation.verdicts().stream().filter(verdict -> TO_BE_MARKED.contains(verdict.standing()))
            .filter(verdict -> concerns(verdict, entry, whole, point))
            .min(Comparator.comparing(Verdict::standing).thenComparing(verdict -> verdict.check().gravity()));
    }

    /** A verdict on the part, on something inside it, or on a whole of which it read this very place. */
    private static boolean concerns(Verdict verdict, Entry entry, EObject whole, EObject point) {
        if (verdict.subject() == null) {
            return false;
        }
        boolean partOfItsOwn = entry.way.size() > 2 && whole != null;
        if (partOfItsOwn && EcoreUtil.isAncestor(whole, verdict.subject())) {
            return true;
        }
        return point != null && EcoreUtil.isAncestor(verdict.subject(), point) && verdict.check().reads().contains(entry.way.getLast());
    }
}
