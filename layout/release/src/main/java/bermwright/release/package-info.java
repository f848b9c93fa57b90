// SPDX-License-Identifier: Apache-2.0
/**
 * Makes what is handed out: pages of the manual, an image with its own Java, checksums; built only with
 * {@code -Prelease}.
 */
package bermwright.release;
