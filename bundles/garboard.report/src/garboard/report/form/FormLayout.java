// SPDX-License-Identifier: EPL-2.0
package garboard.report.form;

import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__AC_OUTPUT;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__ALARMS;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__EXHAUST;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__FORMAT_VERSION;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__FUEL_SUPPLY;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__GENERATOR_SET;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__INSPECTIONS;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__INSTRUMENTS;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__MOUNTING;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__PARTIES;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__RAW_WATER;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__STARTING_BATTERY;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__TRIAL;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__UPKEEP;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__VENTILATION;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__VESSEL;
import static garboard.model.GarboardPackage.Literals.ITEM__ID;
import static garboard.model.GarboardPackage.Literals.LOAD_STEP;
import static garboard.model.GarboardPackage.Literals.POINT;
import static garboard.model.GarboardPackage.Literals.READING;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * The sheets of the form in the order of a walk through the boat. Photographs, signatures, acceptances and the history of
 * revisions are not filled in by hand on board; they stay in the record that the form was made from.
 */
public final class FormLayout {

    private static final int BLANKS = 4;
    private static final int BLANK_READINGS = 12;

    private final List<FormSheet> sheets = new ArrayList<>();

    private FormLayout() {
        sheets.add(new FormSheet("Record", record()));
        system("Vessel", COMMISSIONING_RECORD__VESSEL);
        system("Generator set", COMMISSIONING_RECORD__GENERATOR_SET);
        system("Starting battery", COMMISSIONING_RECORD__STARTING_BATTERY);
        system("Fuel", COMMISSIONING_RECORD__FUEL_SUPPLY);
        system("Raw water", COMMISSIONING_RECORD__RAW_WATER);
        system("Exhaust", COMMISSIONING_RECORD__EXHAUST);
        system("Ventilation", COMMISSIONING_RECORD__VENTILATION);
        system("Mounting", COMMISSIONING_RECORD__MOUNTING);
        system("AC output", COMMISSIONING_RECORD__AC_OUTPUT);
        system("Alarms and safety", COMMISSIONING_RECORD__ALARMS);
        system("Inspection", COMMISSIONING_RECORD__INSPECTIONS);
        system("Trial", COMMISSIONING_RECORD__TRIAL);
        system("Upkeep", COMMISSIONING_RECORD__UPKEEP);
    }

    /** All sheets. */
    public static List<FormSheet> sheets() {
        return List.copyOf(new FormLayout().sheets);
    }

    private static List<FormPart> record() {
        var parts = new ArrayList<FormPart>();
        var fields = new ArrayList<FormField>();
        for (EAttribute attribute : COMMISSIONING_RECORD.getEAllAttributes()) {
            if (attribute != COMMISSIONING_RECORD__FORMAT_VERSION) {
                fields.add(new FormField(List.of(attribute)));
            }
        }
        parts.add(new FormPart.Group(List.of(), fields));
        collect(List.of(COMMISSIONING_RECORD__PARTIES), parts);
        collect(List.of(COMMISSIONING_RECORD__INSTRUMENTS), parts);
        return parts;
    }

    private void system(String name, EReference system) {
        var parts = new ArrayList<FormPart>();
        collect(List.of(system), parts);
        sheets.add(new FormSheet(name, parts));
    }

    /** The part that the path leads to, then the parts below it. */
    private static void collect(List<EStructuralFeature> path, List<FormPart> into) {
        var reference = (EReference) path.getLast();
        EClass type = reference.getEReferenceType();
        boolean many = path.stream().anyMatch(EStructuralFeature::isMany);
        var fields = new ArrayList<FormField>();
        var below = new ArrayList<List<EStructuralFeature>>();
        List<EStructuralFeature> start = many ? List.of() : path;
        fields(type, start, fields);
        for (EReference part : type.getEAllContainments()) {
            if (part.isMany() || part.getEReferenceType() != POINT) {
                below.add(plus(path, part));
            }
        }
        if (reference.isMany()) {
            into.add(new FormPart.Items(path, fields, type == READING || type == LOAD_STEP ? BLANK_READINGS : BLANKS));
        } else if (!fields.isEmpty()) {
            into.add(new FormPart.Group(path, fields));
        }
        below.forEach(next -> collect(next, into));
    }

    /** The attributes of a class and of its points, which have no heading of their own. */
    private static void fields(EClass type, List<EStructuralFeature> start, List<FormField> into) {
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (feature instanceof EAttribute attribute) {
                if (attribute != ITEM__ID && attribute.getEAttributeType().getInstanceClass() != byte[].class) {
                    into.add(new FormField(plus(start, attribute)));
                }
            } else if (feature instanceof EReference part && part.isContainment() && !part.isMany()
                    && part.getEReferenceType() == POINT) {
                fields(part.getEReferenceType(), plus(start, part), into);
            }
        }
    }

    private static List<EStructuralFeature> plus(List<EStructuralFeature> path, EStructuralFeature next) {
        var longer = new ArrayList<>(path);
        longer.add(next);
        return longer;
    }
}
