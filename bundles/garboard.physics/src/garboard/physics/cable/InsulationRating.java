// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

/** Temperature ratings of insulation that the tables of permitted current know. */
public enum InsulationRating {
    C60(60), C70(70), C75(75), C80(80), C85(85), C90(90), C105(105), C125(125), C200(200);

    final int celsius;

    InsulationRating(int celsius) {
        this.celsius = celsius;
    }

    @Override
    public String toString() {
        return celsius + " degC";
    }
}
