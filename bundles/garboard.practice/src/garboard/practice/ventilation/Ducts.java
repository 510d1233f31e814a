// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__FUNCTION;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DUCTS;

import java.util.List;

import garboard.checks.FeaturePath;
import garboard.model.AirDuct;
import garboard.model.Answer;
import garboard.model.DuctFunction;
import garboard.model.Ventilation;
import garboard.quantity.Area;

/** The ducts of the record by what they do. */
final class Ducts {

    private Ducts() {
    }

    /** The ducts of one function; to be gone on from with {@link FeaturePath#then}. */
    static FeaturePath paths(DuctFunction function) {
        return path(VENTILATION__DUCTS).where(AirDuct.class, duct -> duct.getFunction() == function);
    }

    /** Supply and exhaust of natural ventilation. */
    static FeaturePath naturalPaths() {
        return path(VENTILATION__DUCTS).where(AirDuct.class, Ducts::isNatural);
    }

    /** Those of them that are flexible. */
    static FeaturePath flexibleNaturalPaths() {
        return path(VENTILATION__DUCTS).where(AirDuct.class, duct -> isNatural(duct) && duct.getFlexible() == Answer.YES);
    }

    /** What {@link #paths} and its like decide by. */
    static FeaturePath function() {
        return path(VENTILATION__DUCTS, AIR_DUCT__FUNCTION);
    }

    static List<AirDuct> of(Ventilation ventilation, DuctFunction function) {
        return ventilation.getDucts().stream().filter(duct -> duct.getFunction() == function).toList();
    }

    static List<AirDuct> natural(Ventilation ventilation) {
        return ventilation.getDucts().stream().filter(Ducts::isNatural).toList();
    }

    static Area total(List<AirDuct> ducts) {
        return Area.of(ducts.stream().mapToDouble(duct -> duct.getArea().si()).sum());
    }

    static String name(AirDuct duct) {
        return duct.getName() == null || duct.getName().isBlank() ? "the duct" : "the duct \"" + duct.getName() + "\"";
    }

    private static boolean isNatural(AirDuct duct) {
        return duct.getFunction() == DuctFunction.NATURAL_SUPPLY || duct.getFunction() == DuctFunction.NATURAL_EXHAUST;
    }
}
