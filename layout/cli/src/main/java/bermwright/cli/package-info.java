// SPDX-License-Identifier: Apache-2.0
/**
 * One class per command: parse, call assessment, print, exit code.
 */
package bermwright.cli;
