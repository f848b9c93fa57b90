// SPDX-License-Identifier: Apache-2.0
package bermwright.rules.site;

import bermwright.published.PublishedRule;

class PublishedRuleTest extends PublishedRule {
}
