// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

/** Make of a conductor in IEC 60228. */
public enum StrandClass {
    /** Class 2, stranded, plain copper. */
    CLASS_2_PLAIN("cl2_plain"),
    /** Class 2, stranded, metal-coated (tinned). */
    CLASS_2_COATED("cl2_coated"),
    /** Class 5, flexible, plain copper. */
    CLASS_5_PLAIN("cl5_plain"),
    /** Class 5, flexible, metal-coated (tinned). */
    CLASS_5_COATED("cl5_coated");

    final String column;

    StrandClass(String column) {
        this.column = column;
    }
}
