// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ASPIRATION;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__DESIGN_AMBIENT;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.TRIAL__BAROMETRIC_PRESSURE;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DESIGN_AMBIENT;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.FuelKind;
import garboard.model.Trial;
import garboard.physics.rating.Atmosphere;
import garboard.physics.rating.SimpleDerating;
import garboard.practice.Figures;
import garboard.quantity.AbsolutePressure;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

/** What the hottest air of the compartment and the barometer of the trial leave of the engine's rating, by a textbook's rule. */
final class Derating {

    private Derating() {
    }

    static Condition<EObject> takesSomething() {
        return Condition.when("sets in air that is hotter or thinner than they are rated for").known(path(VENTILATION__DESIGN_AMBIENT),
            path(GENERATOR_SET__FUEL)).uses(path(GENERATOR_SET__DESIGN_AMBIENT), path(GENERATOR_SET__ASPIRATION), path(TRIAL__BAROMETRIC_PRESSURE))
            .test(s -> share(s).si() < 1, "neither heat nor height takes anything off the rating");
    }

    static Ratio share(Situation<?> s) {
        return Ratio.of(heat(s) * height(s));
    }

    /** The rule counts from 29 degC (85 F); a set that is built for more counts from there. */
    private static double heat(Situation<?> s) {
        double inSpace = SimpleDerating.textbookTemperature(engine(s), space(s)).si();
        Temperature builtFor = s.set().getDesignAmbient();
        return builtFor == null ? inSpace : Math.min(1, inSpace / SimpleDerating.textbookTemperature(engine(s), builtFor).si());
    }

    private static double height(Situation<?> s) {
        return barometer(s).map(Atmosphere::standardHeight)
            .map(height -> SimpleDerating.textbookHeight(engine(s), Length.of(Math.max(0, height.si()))).si()).orElse(1.0);
    }

    static String inWords(Situation<?> s) {
        return "air of up to " + Figures.both(space(s)) + barometer(s).map(pressure -> " at " + Figures.both(pressure)).orElse("");
    }

    private static Temperature space(Situation<?> s) {
        return s.record().getVentilation().getDesignAmbient();
    }

    private static Optional<AbsolutePressure> barometer(Situation<?> s) {
        return s.optional(s.record().getTrial(), Trial::getBarometricPressure);
    }

    /** As long as the aspiration is not entered a diesel counts as naturally aspirated, which loses more. */
    private static SimpleDerating.TextbookEngine engine(Situation<?> s) {
        if (s.set().getFuel() == FuelKind.GASOLINE) {
            return SimpleDerating.TextbookEngine.SPARK_IGNITION;
        }
        return switch (s.set().getAspiration()) {
            case TURBOCHARGED, TURBOCHARGED_CHARGE_AIR_COOLED -> SimpleDerating.TextbookEngine.TURBOCHARGED;
            case NATURALLY_ASPIRATED, NOT_ENTERED -> SimpleDerating.TextbookEngine.DIESEL_NATURALLY_ASPIRATED;
        };
    }
}
