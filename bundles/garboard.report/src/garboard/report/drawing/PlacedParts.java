// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__EXHAUST;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__FUEL_SUPPLY;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__RAW_WATER;

import java.util.ArrayList;
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
import garboard.model.ExhaustPoint;
import garboard.model.GarboardPackage.Literals;
import garboard.model.Point;
import garboard.model.RecordPath;
import garboard.report.drawing.PlacedPart.Circuit;

/** The parts of a record that a drawing shows, each circuit in the order of flow. */
final class PlacedParts {

    static final String SIPHON_BREAK = "siphonBreak";
    static final String DRY_CREST = "dryCrest";
    static final String CREST = "crest";
    static final String OUTLET = "outlet";

    /** The points that keep the sea out, in the order in which the clearance plot names them. */
    static final List<String> KEEPERS = List.of(SIPHON_BREAK, DRY_CREST, CREST, OUTLET);

    /** Where a part's place stands in the record. */
    private record Entry(String id, Circuit circuit, List<EReference> way) {
        static Entry of(String id, Circuit circuit, EReference... way) {
            return new Entry(id, circuit, List.of(way));
        }

        /** A part that has more than a place ends one step before its place. */
        List<EReference> whole() {
            return way.size() > 2 ? way.subList(0, way.size() - 1) : way;
        }
    }

    private static final List<Entry> ENTRIES = List.of(
        Entry.of("fuelTank", Circuit.FUEL, COMMISSIONING_RECORD__FUEL_SUPPLY, Literals.FUEL_SUPPLY__TANK, Literals.FUEL_TANK__TOP),
        Entry.of("fuelSeparator", Circuit.FUEL, COMMISSIONING_RECORD__FUEL_SUPPLY, Literals.FUEL_SUPPLY__SEPARATOR,
            Literals.FUEL_SEPARATOR__POSITION),
        Entry.of("fuelPump", Circuit.FUEL, COMMISSIONING_RECORD__FUEL_SUPPLY, Literals.FUEL_SUPPLY__PUMP_POSITION),
        Entry.of("pickUp", Circuit.RAW_WATER, COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__PICK_UP,
            Literals.HULL_PICK_UP__POSITION),
        Entry.of("strainer", Circuit.RAW_WATER, COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__STRAINER,
            Literals.WATER_STRAINER__POSITION),
        Entry.of("waterPump", Circuit.RAW_WATER, COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__PUMP,
            Literals.WATER_PUMP__POSITION),
        Entry.of(SIPHON_BREAK, Circuit.RAW_WATER, COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__SIPHON_BREAK,
            Literals.SIPHON_BREAK__VENT_SEAT),
        Entry.of("injection", Circuit.RAW_WATER, COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__INJECTION),
        Entry.of(DRY_CREST, Circuit.EXHAUST, COMMISSIONING_RECORD__EXHAUST, Literals.EXHAUST_RUN__RISER, Literals.RISER__DRY_CREST_INSIDE),
        Entry.of("muffler", Circuit.EXHAUST, COMMISSIONING_RECORD__EXHAUST, Literals.EXHAUST_RUN__MUFFLER, Literals.MUFFLER__POSITION),
        Entry.of(CREST, Circuit.EXHAUST, COMMISSIONING_RECORD__EXHAUST, Literals.EXHAUST_RUN__CREST, Literals.EXHAUST_CREST__INSIDE_BOTTOM),
        Entry.of(OUTLET, Circuit.EXHAUST, COMMISSIONING_RECORD__EXHAUST, Literals.EXHAUST_RUN__OUTLET,
            Literals.EXHAUST_OUTLET__INSIDE_BOTTOM));

    private static final List<Standing> TO_BE_MARKED =
        List.of(Standing.CHECK_BROKE, Standing.FALLS_SHORT, Standing.BORDERLINE, Standing.CANNOT_TELL, Standing.ACCEPTED);

    private PlacedParts() {
    }

    static List<PlacedPart> of(CommissioningRecord record, Evaluation evaluation, Words words) {
        return ENTRIES.stream().map(entry -> part(entry, record, evaluation, words)).toList();
    }

    /** The places of the measured path of the exhaust, in the order of flow, told by their own names or else their ids. */
    static List<PlacedPart> exhaustPath(CommissioningRecord record) {
        if (record.getExhaust() == null) {
            return List.of();
        }
        var points = new ArrayList<PlacedPart>();
        for (ExhaustPoint point : record.getExhaust().getPath()) {
            String name = point.getName() == null || point.getName().isBlank() ? String.valueOf(point.getId()) : point.getName();
            String whole = RecordPath.key(point);
            points.add(new PlacedPart(whole, name, Circuit.EXHAUST, whole + "." + Literals.EXHAUST_POINT__POSITION.getName(), whole,
                Optional.ofNullable(point.getPosition()), Optional.empty()));
        }
        return points;
    }

    private static PlacedPart part(Entry entry, CommissioningRecord record, Evaluation evaluation, Words words) {
        EObject owner = record;
        EObject whole = null;
        for (EReference step : entry.way) {
            whole = owner;
            owner = owner == null ? null : (EObject) owner.eGet(step);
        }
        return new PlacedPart(entry.id, words.get("part." + entry.id), entry.circuit, RecordPath.key(record, entry.way),
            RecordPath.key(record, entry.whole()), Optional.ofNullable((Point) owner), worst(entry, whole, owner, evaluation));
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
