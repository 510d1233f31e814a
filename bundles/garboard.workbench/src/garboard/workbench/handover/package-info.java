// SPDX-License-Identifier: EPL-2.0
/** Handing over: the pages of the upkeep and of the signatures, and the writing of workbooks in the background. */
package garboard.workbench.handover;
