// SPDX-License-Identifier: Apache-2.0
package bermwright.rules.cli;

import bermwright.published.PublishedRule;

class PublishedRuleTest extends PublishedRule {
}
