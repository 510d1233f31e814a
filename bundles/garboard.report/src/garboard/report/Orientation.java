// SPDX-License-Identifier: EPL-2.0
package garboard.report;

/** How a sheet lies. */
public enum Orientation {
    PORTRAIT, LANDSCAPE
}
