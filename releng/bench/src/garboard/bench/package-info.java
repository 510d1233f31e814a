// SPDX-License-Identifier: EPL-2.0
/** How long the things take that a person waits for, each beside the least that it could take. Run with {@code releng/bench/run}. */
package garboard.bench;
