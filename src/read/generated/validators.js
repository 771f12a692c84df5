/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */
var __getOwnPropNames = Object.getOwnPropertyNames;
var __commonJS = (cb, mod) => function() {
  try {
    return mod || (0, cb[__getOwnPropNames(cb)[0]])((mod = { exports: {} }).exports, mod), mod.exports;
  } catch (e) {
    throw mod = 0, e;
  }
};

// sameness:fast-deep-equal
var require_fast_deep_equal = __commonJS({
  "sameness:fast-deep-equal"(exports, module) {
    var isObject = (value) => typeof value == "object" && value !== null;
    module.exports = function same(a, b) {
      if (!isObject(a) || !isObject(b)) return a === b;
      let keys = Object.keys(a);
      return Array.isArray(a) === Array.isArray(b) && keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && same(a[key], b[key]));
    };
  }
});

// node_modules/ajv/dist/runtime/equal.js
var require_equal = __commonJS({
  "node_modules/ajv/dist/runtime/equal.js"(exports) {
    "use strict";
    Object.defineProperty(exports, "__esModule", { value: !0 });
    var equal = require_fast_deep_equal();
    equal.code = 'require("ajv/dist/runtime/equal").default';
    exports.default = equal;
  }
});

// node_modules/ajv/dist/runtime/ucs2length.js
var require_ucs2length = __commonJS({
  "node_modules/ajv/dist/runtime/ucs2length.js"(exports) {
    "use strict";
    Object.defineProperty(exports, "__esModule", { value: !0 });
    function ucs2length(str) {
      let len = str.length, length = 0, pos = 0, value;
      for (; pos < len; )
        length++, value = str.charCodeAt(pos++), value >= 55296 && value <= 56319 && pos < len && (value = str.charCodeAt(pos), (value & 64512) === 56320 && pos++);
      return length;
    }
    exports.default = ucs2length;
    ucs2length.code = 'require("ajv/dist/runtime/ucs2length").default';
  }
});

// <stdin>
var audit_record = validate20, schema31 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "audit-record.json", title: "AuditRecord", type: "object", description: "The judgement of one commit of the main branch, replayed: one line of `ullage audit --format ndjson`. Every key is always there.", additionalProperties: !1, required: ["format", "commit", "tree", "base", "parents", "on", "committed", "authored", "author", "committer", "subject", "trailers", "signature", "touched", "verdict", "reasons", "policyFrom", "unreadMain", "failOn", "findings", "open", "between", "renamed", "waivers", "cost", "limits", "policyChanges", "proposed", "tried", "problems"], properties: { format: { const: "ullage-audit-record-1", description: "The version of this format. With the same number keys may be added; none is taken away, and none changes its meaning." }, commit: { type: "string", description: "The commit." }, tree: { type: "string", description: "Its tree." }, base: { type: ["string", "null"], description: "Its first parent, which it was judged against (or its nearest ancestor that can be read, see `unreadMain`); null for the first commit of all." }, parents: { type: "integer", minimum: 0, description: "How many parents it has; two or more make it a merge." }, on: { $ref: "common.json#/$defs/date", description: "The day it was judged as of: the committer's date, in UTC." }, committed: { type: "string", description: "The committer's date and time, RFC 3339." }, authored: { type: "string", description: "The author's date and time, RFC 3339." }, author: { $ref: "#/$defs/person" }, committer: { $ref: "#/$defs/person" }, subject: { type: "string", description: "The first line of the message." }, trailers: { type: "array", description: "In the order of the message.", items: { $ref: "#/$defs/trailer" } }, signature: { enum: ["present", "absent"], description: "Whether a signature is there. Whose it is, and whether it is good, is not known." }, touched: { type: "array", description: "What kinds of files it changed.", items: { enum: ["settings", "storage", "prices", "policies", "waivers", "procedures"], type: "string" } }, verdict: { $ref: "#/$defs/verdict" }, reasons: { type: "array", description: "Why, one sentence each, the most serious first.", items: { type: "string" } }, policyFrom: { enum: ["base", "head", null], description: "Whose policy applied: the commit's own only where the base had none, or none that can be read; null where nothing was judged." }, unreadMain: { description: "Only where main itself could not be read: what it was compared with instead; null otherwise.", oneOf: [{ $ref: "#/$defs/unreadMain" }, { type: "null" }] }, failOn: { enum: ["error", "warning"], description: "The level from which a finding fails." }, findings: { type: "array", description: "What is new, worse or fixed with the commit, the most serious first.", items: { $ref: "#/$defs/finding" } }, open: { description: "How many findings are open after it; null where nothing was judged.", oneOf: [{ $ref: "#/$defs/counts" }, { type: "null" }] }, between: { description: "What was new and what was fixed since the record before; null where nothing was judged.", oneOf: [{ $ref: "#/$defs/between" }, { type: "null" }] }, renamed: { type: "array", description: "Findings that continue under other names.", items: { $ref: "#/$defs/renamed" } }, waivers: { type: "array", description: "Waivers that were used, or still needed after their date.", items: { $ref: "#/$defs/waiverUse" } }, cost: { description: "The monthly cost; null where nothing was judged.", oneOf: [{ $ref: "#/$defs/cost" }, { type: "null" }] }, limits: { type: "array", description: "Every spend limit that held on the day, and what fell under it after the commit, in the currency of `cost.currencyBefore`.", items: { $ref: "#/$defs/limit" } }, policyChanges: { type: "array", description: "What the commit changed in the policy.", items: { $ref: "#/$defs/policyChange" } }, proposed: { description: "The verdict under the policy that it brought; null where it changed none.", oneOf: [{ $ref: "#/$defs/opinion" }, { type: "null" }] }, tried: { description: "The verdict under the policy that was tried; null where none was.", oneOf: [{ $ref: "#/$defs/opinion" }, { type: "null" }] }, problems: { type: "array", description: "Why it could not be judged; empty where it was.", items: { $ref: "#/$defs/problem" } } }, $defs: { verdict: { title: "AuditVerdict", enum: ["pass", "fail", "not judged"], description: "The verdict." }, level: { title: "AuditLevel", enum: ["error", "warning", "note"], description: "A level of SARIF 2.1.0." }, money: { title: "AuditMoney", type: "string", pattern: "^-?[0-9]+(\\.[0-9]+)?$", description: "An exact amount, as a decimal string." }, person: { title: "AuditPerson", type: "object", description: "Who, as the commit names them.", additionalProperties: !1, required: ["name", "email"], properties: { name: { type: "string", description: "The name." }, email: { type: "string", description: "The address." } } }, trailer: { title: "AuditTrailer", type: "object", description: "One line at the end of the commit message, such as Reviewed-by.", additionalProperties: !1, required: ["key", "value"], properties: { key: { type: "string", description: "The text before the colon." }, value: { type: "string", description: "The text after it." } } }, subject: { title: "AuditSubject", type: "object", description: "What it is about.", additionalProperties: !1, required: ["kind", "name"], properties: { kind: { enum: ["estate", "site", "team", "label", "scope", "server", "volume", "volume-group", "file-system", "branch"], description: "The kind of thing." }, name: { type: "string", description: "Its name." } } }, place: { title: "AuditPlace", type: "object", description: "A place in a file of one of the two revisions.", additionalProperties: !1, required: ["revision", "file", "line", "column"], properties: { revision: { enum: ["base", "head", null], description: "The first parent, or the commit itself; null where it is not known which." }, file: { type: "string", description: "The path from the top of the repository." }, line: { type: "integer", minimum: 0, description: "Counts from 1." }, column: { type: "integer", minimum: 0, description: "Counts from 1, in UTF-16 units." } } }, finding: { title: "AuditFinding", type: "object", description: "What a rule found.", additionalProperties: !1, required: ["rule", "entry", "level", "baselineState", "about", "subject", "facet", "message", "fails", "place", "waiver", "outgrown", "held"], properties: { rule: { type: "string", description: "The rule." }, entry: { type: "string", description: "The name of the entry in the rule pack." }, level: { $ref: "#/$defs/level" }, baselineState: { enum: ["new", "updated", "absent"], description: "SARIF 2.1.0: new with the commit, made worse by it, or no longer there." }, about: { enum: ["state", "change"], description: "Whether it is about the state, and stays until it is fixed, or about the change alone." }, subject: { $ref: "#/$defs/subject" }, facet: { type: ["string", "null"], description: "Tells several findings of one entry about one subject apart." }, message: { type: "string", description: "What is wrong." }, fails: { type: "boolean", description: "Whether it made the verdict fail." }, place: { $ref: "#/$defs/place" }, waiver: { description: "The waiver that covers it.", oneOf: [{ $ref: "#/$defs/waiver" }, { type: "null" }] }, outgrown: { description: "A waiver that is for it and covers less; null where there is none, or another covers it.", oneOf: [{ $ref: "#/$defs/waiver" }, { type: "null" }] }, held: { description: "What either was held to, where it has no ceiling and the finding would fail without it; null otherwise.", oneOf: [{ $ref: "#/$defs/held" }, { type: "null" }] } } }, brief: { title: "AuditStanding", type: "object", description: "A finding that was there without a change of storage.", additionalProperties: !1, required: ["rule", "entry", "level", "subject", "facet", "message"], properties: { rule: { type: "string", description: "The rule." }, entry: { type: "string", description: "The name of the entry." }, level: { $ref: "#/$defs/level" }, subject: { $ref: "#/$defs/subject" }, facet: { type: ["string", "null"], description: "As in a finding." }, message: { type: "string", description: "What is wrong." } } }, between: { title: "AuditBetween", type: "object", description: "What was new and what was fixed on the base since the record before, without a change of storage: because of the date, the policy, the prices or the readings.", additionalProperties: !1, required: ["began", "new", "fixed"], properties: { began: { type: "boolean", description: "Whether the replay began here; `new` is then all that was open at the beginning." }, new: { type: "array", description: "Findings that were not there before.", items: { $ref: "#/$defs/brief" } }, fixed: { type: "array", description: "Findings that are no longer there.", items: { $ref: "#/$defs/brief" } } } }, renamed: { title: "AuditRenamed", type: "object", description: "A finding that continues under another name.", additionalProperties: !1, required: ["entry", "from", "to"], properties: { entry: { type: "string", description: "The name of the entry." }, from: { $ref: "#/$defs/named" }, to: { $ref: "#/$defs/named" } } }, named: { title: "AuditNamed", type: "object", description: "What identifies a finding.", additionalProperties: !1, required: ["subject", "facet"], properties: { subject: { $ref: "#/$defs/subject" }, facet: { type: ["string", "null"], description: "As in a finding." } } }, counts: { title: "AuditCounts", type: "object", description: "How many findings are open after the commit, waived ones included.", additionalProperties: !1, required: ["error", "warning", "note"], properties: { error: { type: "integer", minimum: 0, description: "Errors." }, warning: { type: "integer", minimum: 0, description: "Warnings." }, note: { type: "integer", minimum: 0, description: "Notes." } } }, waiver: { title: "AuditWaiver", type: "object", description: "A waiver.", additionalProperties: !1, required: ["rule", "name", "subject", "kind", "upTo", "reason", "approvedBy", "from", "until", "file", "line"], properties: { rule: { type: "string", description: "The rule or entry it is for." }, name: { type: ["string", "null"], description: "The one entry that is meant; null where any of the rule is." }, subject: { type: "string", description: "The subject it is for." }, kind: { type: ["string", "null"], description: "The kind of that subject; null where any of the name is meant." }, upTo: { type: ["string", "null"], description: "The most that it covers, as it is written; null where it has no ceiling, and `held` in the finding says what it was held to." }, reason: { type: "string", description: "Why." }, approvedBy: { type: "string", description: "Who approved it." }, from: { $ref: "common.json#/$defs/date", description: "The first day on which it applies." }, until: { $ref: "common.json#/$defs/date", description: "The last day on which it applies." }, file: { type: "string", description: "The file it is in." }, line: { type: "integer", minimum: 0, description: "Its line." } } }, waiverUse: { title: "AuditWaiverUse", type: "object", description: "How a waiver was used in this judgement.", additionalProperties: !1, required: ["state", "waiver", "findings", "writeInstead"], properties: { state: { enum: ["used", "outgrown", "expired", "written otherwise"], description: "`used`: it waived a finding; `outgrown`: a finding that it was for was beyond what it covers; `expired`: its date was over, and there still was a finding that it was for; `written otherwise`: only the writing of its subject kept it from a finding." }, waiver: { $ref: "#/$defs/waiver" }, findings: { type: "integer", minimum: 0, description: "How many findings." }, writeInstead: { type: ["string", "null"], description: "The waiver's line as it would have to be written to be for a finding of this judgement, where only the writing of its subject keeps it from that; null otherwise." } } }, limit: { title: "AuditLimit", type: "object", description: "One spend limit.", additionalProperties: !1, required: ["entry", "subject", "limit", "after"], properties: { entry: { type: "string", description: "The entry of the rule pack." }, subject: { $ref: "#/$defs/subject", description: "Whose cost it limits." }, limit: { $ref: "#/$defs/money", description: "The most that a month may cost." }, after: { $ref: "#/$defs/money", description: "What falls under it." } } }, team: { title: "AuditTeam", type: "object", description: "The monthly cost of a team's storage.", additionalProperties: !1, required: ["team", "before", "after", "difference"], properties: { team: { type: ["string", "null"], description: "The team; null for what belongs to none." }, before: { $ref: "#/$defs/money", description: "Before the commit." }, after: { $ref: "#/$defs/money", description: "After it." }, difference: { type: ["string", "null"], description: "The difference; null where before and after are in two currencies." } } }, cost: { title: "AuditCost", type: "object", description: "What the estate costs a month.", additionalProperties: !1, required: ["currencyBefore", "currency", "before", "after", "difference", "teams"], properties: { currencyBefore: { type: "string", description: "The currency of what it cost before (ISO 4217)." }, currency: { type: "string", description: "ISO 4217." }, before: { $ref: "#/$defs/money", description: "Before the commit." }, after: { $ref: "#/$defs/money", description: "After it." }, difference: { type: ["string", "null"], description: "The difference; null where before and after are in two currencies." }, teams: { type: "array", description: "By team, in order of name.", items: { $ref: "#/$defs/team" } } } }, policyChange: { title: "AuditPolicyChange", type: "object", description: "One alteration of the policy.", additionalProperties: !1, required: ["direction", "of", "name", "key", "from", "to", "monthly"], properties: { direction: { enum: ["tighter", "looser", "neither", "unknown"], description: "Whether it lets more through." }, monthly: { description: "What another price comes to a month for the estate on the base; null where it is no price, or comes to nothing.", oneOf: [{ title: "AuditMonthly", type: "object", description: "An amount a month.", additionalProperties: !1, required: ["currency", "difference"], properties: { currency: { type: "string", description: "The currency (ISO 4217)." }, difference: { type: "string", description: "The difference, exact." } } }, { type: "null" }] }, of: { enum: ["rule", "waiver", "price-list", "settings", "readings", "surveys", "server", "procedures"], description: "What was altered." }, name: { type: "string", description: "Its name." }, key: { type: ["string", "null"], description: "The parameter or key." }, from: { type: ["string", "null"], description: "What it was." }, to: { type: ["string", "null"], description: "What it is." } } }, unreadMain: { title: "AuditUnreadMain", type: "object", description: "Main itself could not be read: what it was compared with instead.", additionalProperties: !1, required: ["comparedWith", "commits", "problem", "policy", "pricedByBranch"], properties: { comparedWith: { type: ["string", "null"], description: "The nearest first-parent ancestor of main that can be read, whose estate was compared with; null where there is none, and the head was judged alone, as a first adoption." }, commits: { type: "integer", minimum: 1, description: "How many commits of main do not read: those after that ancestor, or all there are." }, problem: { $ref: "#/$defs/problem", description: "The first thing that is wrong with main." }, policy: { title: "AuditUnreadPolicy", type: "object", description: "Whose each part of the policy was: main's own where that part reads, the ancestor's where it does not, and the branch's where neither has one.", additionalProperties: !1, required: ["settings", "prices", "rules", "waivers"], properties: { settings: { $ref: "#/$defs/policySource", description: "The settings." }, prices: { $ref: "#/$defs/policySource", description: "The price lists." }, rules: { $ref: "#/$defs/policySource", description: "The rule packs, and the readings they ask for." }, waivers: { $ref: "#/$defs/policySource", description: "The waivers." } } }, pricedByBranch: { type: "array", items: { type: "string" }, description: "Tiers and server types that main declares and no list on main prices, for which the branch's prices hold." } } }, policySource: { title: "AuditPolicySource", enum: ["main", "ancestor", "branch"], description: "Whose a part of the policy was." }, opinion: { title: "AuditOpinion", type: "object", description: "What another policy would have said.", additionalProperties: !1, required: ["verdict", "reasons"], properties: { verdict: { $ref: "#/$defs/verdict" }, reasons: { type: "array", description: "Why.", items: { type: "string" } } } }, problem: { title: "AuditProblem", type: "object", description: "One problem.", additionalProperties: !1, required: ["place", "message", "advice"], properties: { place: { description: "Where.", oneOf: [{ $ref: "#/$defs/place" }, { type: "null" }] }, message: { type: "string", description: "What is wrong." }, advice: { type: "string", description: "What to do." } } }, held: { title: "AuditHeld", type: "object", description: "What a waiver without a ceiling was held to: what it has covered on main before.", additionalProperties: !1, required: ["kind", "covered"], properties: { kind: { enum: ["nothing yet", "as much", "less", "something else", "unknown"], description: "`nothing yet`: it had covered nothing, and covers this; `as much` as this or more; `less` than this; `something else`; `unknown` where history does not tell. Only the first two cover it." }, covered: { description: "What it had covered; null where that is nothing.", oneOf: [{ $ref: "#/$defs/covered" }, { type: "null" }] } } }, covered: { title: "AuditCovered", type: "object", description: "What a waiver without a ceiling first covered.", additionalProperties: !1, required: ["entry", "level", "subject", "facet", "message", "size", "amount", "number", "currency", "commit", "on"], properties: { entry: { type: "string", description: "The name of the entry." }, level: { $ref: "#/$defs/level" }, subject: { $ref: "#/$defs/subject" }, facet: { type: ["string", "null"], description: "As in a finding." }, message: { type: "string", description: "What was wrong." }, size: { type: ["string", "null"], description: "What it came to in bytes, where the rule measures a size; null otherwise." }, amount: { type: ["string", "null"], description: "What it came to in money a month, exact, where the rule measures an amount; null otherwise." }, number: { type: ["string", "null"], description: "What it came to as a number, where the rule measures one; null otherwise." }, currency: { type: "string", description: "The currency of the amount (ISO 4217)." }, commit: { type: "string", description: "The commit of main where it was first seen." }, on: { type: "string", description: "The day of that (RFC 3339 full-date)." } } } } }, schema33 = { title: "Date", type: "string", pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", description: "A full date as RFC 3339 writes it, such as 2026-11-20.", examples: ["2026-11-20"] }, schema34 = { title: "AuditPerson", type: "object", description: "Who, as the commit names them.", additionalProperties: !1, required: ["name", "email"], properties: { name: { type: "string", description: "The name." }, email: { type: "string", description: "The address." } } }, schema36 = { title: "AuditTrailer", type: "object", description: "One line at the end of the commit message, such as Reviewed-by.", additionalProperties: !1, required: ["key", "value"], properties: { key: { type: "string", description: "The text before the colon." }, value: { type: "string", description: "The text after it." } } }, schema37 = { title: "AuditVerdict", enum: ["pass", "fail", "not judged"], description: "The verdict." }, schema56 = { title: "AuditCounts", type: "object", description: "How many findings are open after the commit, waived ones included.", additionalProperties: !1, required: ["error", "warning", "note"], properties: { error: { type: "integer", minimum: 0, description: "Errors." }, warning: { type: "integer", minimum: 0, description: "Warnings." }, note: { type: "integer", minimum: 0, description: "Notes." } } }, schema75 = { title: "AuditPolicyChange", type: "object", description: "One alteration of the policy.", additionalProperties: !1, required: ["direction", "of", "name", "key", "from", "to", "monthly"], properties: { direction: { enum: ["tighter", "looser", "neither", "unknown"], description: "Whether it lets more through." }, monthly: { description: "What another price comes to a month for the estate on the base; null where it is no price, or comes to nothing.", oneOf: [{ title: "AuditMonthly", type: "object", description: "An amount a month.", additionalProperties: !1, required: ["currency", "difference"], properties: { currency: { type: "string", description: "The currency (ISO 4217)." }, difference: { type: "string", description: "The difference, exact." } } }, { type: "null" }] }, of: { enum: ["rule", "waiver", "price-list", "settings", "readings", "surveys", "server", "procedures"], description: "What was altered." }, name: { type: "string", description: "Its name." }, key: { type: ["string", "null"], description: "The parameter or key." }, from: { type: ["string", "null"], description: "What it was." }, to: { type: ["string", "null"], description: "What it is." } } }, func1 = Object.prototype.hasOwnProperty, pattern4 = new RegExp("^[0-9]{4}-[0-9]{2}-[0-9]{2}$", "u"), schema38 = { title: "AuditUnreadMain", type: "object", description: "Main itself could not be read: what it was compared with instead.", additionalProperties: !1, required: ["comparedWith", "commits", "problem", "policy", "pricedByBranch"], properties: { comparedWith: { type: ["string", "null"], description: "The nearest first-parent ancestor of main that can be read, whose estate was compared with; null where there is none, and the head was judged alone, as a first adoption." }, commits: { type: "integer", minimum: 1, description: "How many commits of main do not read: those after that ancestor, or all there are." }, problem: { $ref: "#/$defs/problem", description: "The first thing that is wrong with main." }, policy: { title: "AuditUnreadPolicy", type: "object", description: "Whose each part of the policy was: main's own where that part reads, the ancestor's where it does not, and the branch's where neither has one.", additionalProperties: !1, required: ["settings", "prices", "rules", "waivers"], properties: { settings: { $ref: "#/$defs/policySource", description: "The settings." }, prices: { $ref: "#/$defs/policySource", description: "The price lists." }, rules: { $ref: "#/$defs/policySource", description: "The rule packs, and the readings they ask for." }, waivers: { $ref: "#/$defs/policySource", description: "The waivers." } } }, pricedByBranch: { type: "array", items: { type: "string" }, description: "Tiers and server types that main declares and no list on main prices, for which the branch's prices hold." } } }, schema41 = { title: "AuditPolicySource", enum: ["main", "ancestor", "branch"], description: "Whose a part of the policy was." }, schema39 = { title: "AuditProblem", type: "object", description: "One problem.", additionalProperties: !1, required: ["place", "message", "advice"], properties: { place: { description: "Where.", oneOf: [{ $ref: "#/$defs/place" }, { type: "null" }] }, message: { type: "string", description: "What is wrong." }, advice: { type: "string", description: "What to do." } } }, schema40 = { title: "AuditPlace", type: "object", description: "A place in a file of one of the two revisions.", additionalProperties: !1, required: ["revision", "file", "line", "column"], properties: { revision: { enum: ["base", "head", null], description: "The first parent, or the commit itself; null where it is not known which." }, file: { type: "string", description: "The path from the top of the repository." }, line: { type: "integer", minimum: 0, description: "Counts from 1." }, column: { type: "integer", minimum: 0, description: "Counts from 1, in UTF-16 units." } } };
function validate23(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate23.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.place === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "place" }, message: "must have required property 'place'", schema: schema39.required, parentSchema: schema39, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.message === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "message" }, message: "must have required property 'message'", schema: schema39.required, parentSchema: schema39, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.advice === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "advice" }, message: "must have required property 'advice'", schema: schema39.required, parentSchema: schema39, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "place" || key0 === "message" || key0 === "advice")) {
        let err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema39, data };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    if (data.place !== void 0) {
      let data0 = data.place, _errs3 = errors, valid1 = !1, passing0 = null, _errs4 = errors;
      if (data0 && typeof data0 == "object" && !Array.isArray(data0)) {
        if (data0.revision === void 0) {
          let err4 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/required", keyword: "required", params: { missingProperty: "revision" }, message: "must have required property 'revision'", schema: schema40.required, parentSchema: schema40, data: data0 };
          vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
        }
        if (data0.file === void 0) {
          let err5 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/required", keyword: "required", params: { missingProperty: "file" }, message: "must have required property 'file'", schema: schema40.required, parentSchema: schema40, data: data0 };
          vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
        }
        if (data0.line === void 0) {
          let err6 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/required", keyword: "required", params: { missingProperty: "line" }, message: "must have required property 'line'", schema: schema40.required, parentSchema: schema40, data: data0 };
          vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
        }
        if (data0.column === void 0) {
          let err7 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/required", keyword: "required", params: { missingProperty: "column" }, message: "must have required property 'column'", schema: schema40.required, parentSchema: schema40, data: data0 };
          vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
        }
        for (let key1 in data0)
          if (!(key1 === "revision" || key1 === "file" || key1 === "line" || key1 === "column")) {
            let err8 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema40, data: data0 };
            vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
          }
        if (data0.revision !== void 0) {
          let data1 = data0.revision;
          if (!(data1 === "base" || data1 === "head" || data1 === null)) {
            let err9 = { instancePath: instancePath + "/place/revision", schemaPath: "#/$defs/place/properties/revision/enum", keyword: "enum", params: { allowedValues: schema40.properties.revision.enum }, message: "must be equal to one of the allowed values", schema: schema40.properties.revision.enum, parentSchema: schema40.properties.revision, data: data1 };
            vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
          }
        }
        if (data0.file !== void 0) {
          let data2 = data0.file;
          if (typeof data2 != "string") {
            let err10 = { instancePath: instancePath + "/place/file", schemaPath: "#/$defs/place/properties/file/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema40.properties.file.type, parentSchema: schema40.properties.file, data: data2 };
            vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
          }
        }
        if (data0.line !== void 0) {
          let data3 = data0.line;
          if (!(typeof data3 == "number" && !(data3 % 1) && !isNaN(data3) && isFinite(data3))) {
            let err11 = { instancePath: instancePath + "/place/line", schemaPath: "#/$defs/place/properties/line/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema40.properties.line.type, parentSchema: schema40.properties.line, data: data3 };
            vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
          }
          if (typeof data3 == "number" && isFinite(data3) && (data3 < 0 || isNaN(data3))) {
            let err12 = { instancePath: instancePath + "/place/line", schemaPath: "#/$defs/place/properties/line/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema40.properties.line, data: data3 };
            vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
          }
        }
        if (data0.column !== void 0) {
          let data4 = data0.column;
          if (!(typeof data4 == "number" && !(data4 % 1) && !isNaN(data4) && isFinite(data4))) {
            let err13 = { instancePath: instancePath + "/place/column", schemaPath: "#/$defs/place/properties/column/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema40.properties.column.type, parentSchema: schema40.properties.column, data: data4 };
            vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
          }
          if (typeof data4 == "number" && isFinite(data4) && (data4 < 0 || isNaN(data4))) {
            let err14 = { instancePath: instancePath + "/place/column", schemaPath: "#/$defs/place/properties/column/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema40.properties.column, data: data4 };
            vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
          }
        }
      } else {
        let err15 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema40.type, parentSchema: schema40, data: data0 };
        vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
      }
      var _valid0 = _errs4 === errors;
      _valid0 && (valid1 = !0, passing0 = 0);
      let _errs15 = errors;
      if (data0 !== null) {
        let err16 = { instancePath: instancePath + "/place", schemaPath: "#/properties/place/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema39.properties.place.oneOf[1].type, parentSchema: schema39.properties.place.oneOf[1], data: data0 };
        vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
      }
      var _valid0 = _errs15 === errors;
      if (_valid0 && valid1 ? (valid1 = !1, passing0 = [passing0, 1]) : _valid0 && (valid1 = !0, passing0 = 1), valid1)
        errors = _errs3, vErrors !== null && (_errs3 ? vErrors.length = _errs3 : vErrors = null);
      else {
        let err17 = { instancePath: instancePath + "/place", schemaPath: "#/properties/place/oneOf", keyword: "oneOf", params: { passingSchemas: passing0 }, message: "must match exactly one schema in oneOf", schema: schema39.properties.place.oneOf, parentSchema: schema39.properties.place, data: data0 };
        vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
      }
    }
    if (data.message !== void 0) {
      let data5 = data.message;
      if (typeof data5 != "string") {
        let err18 = { instancePath: instancePath + "/message", schemaPath: "#/properties/message/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema39.properties.message.type, parentSchema: schema39.properties.message, data: data5 };
        vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
      }
    }
    if (data.advice !== void 0) {
      let data6 = data.advice;
      if (typeof data6 != "string") {
        let err19 = { instancePath: instancePath + "/advice", schemaPath: "#/properties/advice/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema39.properties.advice.type, parentSchema: schema39.properties.advice, data: data6 };
        vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
      }
    }
  } else {
    let err20 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema39.type, parentSchema: schema39, data };
    vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
  }
  return validate23.errors = vErrors, errors === 0;
}
validate23.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate22(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate22.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.comparedWith === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "comparedWith" }, message: "must have required property 'comparedWith'", schema: schema38.required, parentSchema: schema38, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.commits === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "commits" }, message: "must have required property 'commits'", schema: schema38.required, parentSchema: schema38, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.problem === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "problem" }, message: "must have required property 'problem'", schema: schema38.required, parentSchema: schema38, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.policy === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "policy" }, message: "must have required property 'policy'", schema: schema38.required, parentSchema: schema38, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    if (data.pricedByBranch === void 0) {
      let err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "pricedByBranch" }, message: "must have required property 'pricedByBranch'", schema: schema38.required, parentSchema: schema38, data };
      vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "comparedWith" || key0 === "commits" || key0 === "problem" || key0 === "policy" || key0 === "pricedByBranch")) {
        let err5 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema38, data };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
    if (data.comparedWith !== void 0) {
      let data0 = data.comparedWith;
      if (typeof data0 != "string" && data0 !== null) {
        let err6 = { instancePath: instancePath + "/comparedWith", schemaPath: "#/properties/comparedWith/type", keyword: "type", params: { type: schema38.properties.comparedWith.type }, message: "must be string,null", schema: schema38.properties.comparedWith.type, parentSchema: schema38.properties.comparedWith, data: data0 };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    }
    if (data.commits !== void 0) {
      let data1 = data.commits;
      if (!(typeof data1 == "number" && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        let err7 = { instancePath: instancePath + "/commits", schemaPath: "#/properties/commits/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema38.properties.commits.type, parentSchema: schema38.properties.commits, data: data1 };
        vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
      }
      if (typeof data1 == "number" && isFinite(data1) && (data1 < 1 || isNaN(data1))) {
        let err8 = { instancePath: instancePath + "/commits", schemaPath: "#/properties/commits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1", schema: 1, parentSchema: schema38.properties.commits, data: data1 };
        vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
      }
    }
    if (data.problem !== void 0 && (validate23(data.problem, { instancePath: instancePath + "/problem", parentData: data, parentDataProperty: "problem", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors), errors = vErrors.length)), data.policy !== void 0) {
      let data3 = data.policy;
      if (data3 && typeof data3 == "object" && !Array.isArray(data3)) {
        if (data3.settings === void 0) {
          let err9 = { instancePath: instancePath + "/policy", schemaPath: "#/properties/policy/required", keyword: "required", params: { missingProperty: "settings" }, message: "must have required property 'settings'", schema: schema38.properties.policy.required, parentSchema: schema38.properties.policy, data: data3 };
          vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
        }
        if (data3.prices === void 0) {
          let err10 = { instancePath: instancePath + "/policy", schemaPath: "#/properties/policy/required", keyword: "required", params: { missingProperty: "prices" }, message: "must have required property 'prices'", schema: schema38.properties.policy.required, parentSchema: schema38.properties.policy, data: data3 };
          vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
        }
        if (data3.rules === void 0) {
          let err11 = { instancePath: instancePath + "/policy", schemaPath: "#/properties/policy/required", keyword: "required", params: { missingProperty: "rules" }, message: "must have required property 'rules'", schema: schema38.properties.policy.required, parentSchema: schema38.properties.policy, data: data3 };
          vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
        }
        if (data3.waivers === void 0) {
          let err12 = { instancePath: instancePath + "/policy", schemaPath: "#/properties/policy/required", keyword: "required", params: { missingProperty: "waivers" }, message: "must have required property 'waivers'", schema: schema38.properties.policy.required, parentSchema: schema38.properties.policy, data: data3 };
          vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
        }
        for (let key1 in data3)
          if (!(key1 === "settings" || key1 === "prices" || key1 === "rules" || key1 === "waivers")) {
            let err13 = { instancePath: instancePath + "/policy", schemaPath: "#/properties/policy/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema38.properties.policy, data: data3 };
            vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
          }
        if (data3.settings !== void 0) {
          let data4 = data3.settings;
          if (!(data4 === "main" || data4 === "ancestor" || data4 === "branch")) {
            let err14 = { instancePath: instancePath + "/policy/settings", schemaPath: "#/$defs/policySource/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values", schema: schema41.enum, parentSchema: schema41, data: data4 };
            vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
          }
        }
        if (data3.prices !== void 0) {
          let data5 = data3.prices;
          if (!(data5 === "main" || data5 === "ancestor" || data5 === "branch")) {
            let err15 = { instancePath: instancePath + "/policy/prices", schemaPath: "#/$defs/policySource/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values", schema: schema41.enum, parentSchema: schema41, data: data5 };
            vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
          }
        }
        if (data3.rules !== void 0) {
          let data6 = data3.rules;
          if (!(data6 === "main" || data6 === "ancestor" || data6 === "branch")) {
            let err16 = { instancePath: instancePath + "/policy/rules", schemaPath: "#/$defs/policySource/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values", schema: schema41.enum, parentSchema: schema41, data: data6 };
            vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
          }
        }
        if (data3.waivers !== void 0) {
          let data7 = data3.waivers;
          if (!(data7 === "main" || data7 === "ancestor" || data7 === "branch")) {
            let err17 = { instancePath: instancePath + "/policy/waivers", schemaPath: "#/$defs/policySource/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values", schema: schema41.enum, parentSchema: schema41, data: data7 };
            vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
          }
        }
      } else {
        let err18 = { instancePath: instancePath + "/policy", schemaPath: "#/properties/policy/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema38.properties.policy.type, parentSchema: schema38.properties.policy, data: data3 };
        vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
      }
    }
    if (data.pricedByBranch !== void 0) {
      let data8 = data.pricedByBranch;
      if (Array.isArray(data8)) {
        let len0 = data8.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data9 = data8[i0];
          if (typeof data9 != "string") {
            let err19 = { instancePath: instancePath + "/pricedByBranch/" + i0, schemaPath: "#/properties/pricedByBranch/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema38.properties.pricedByBranch.items.type, parentSchema: schema38.properties.pricedByBranch.items, data: data9 };
            vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
          }
        }
      } else {
        let err20 = { instancePath: instancePath + "/pricedByBranch", schemaPath: "#/properties/pricedByBranch/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema38.properties.pricedByBranch.type, parentSchema: schema38.properties.pricedByBranch, data: data8 };
        vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
      }
    }
  } else {
    let err21 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema38.type, parentSchema: schema38, data };
    vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
  }
  return validate22.errors = vErrors, errors === 0;
}
validate22.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema45 = { title: "AuditFinding", type: "object", description: "What a rule found.", additionalProperties: !1, required: ["rule", "entry", "level", "baselineState", "about", "subject", "facet", "message", "fails", "place", "waiver", "outgrown", "held"], properties: { rule: { type: "string", description: "The rule." }, entry: { type: "string", description: "The name of the entry in the rule pack." }, level: { $ref: "#/$defs/level" }, baselineState: { enum: ["new", "updated", "absent"], description: "SARIF 2.1.0: new with the commit, made worse by it, or no longer there." }, about: { enum: ["state", "change"], description: "Whether it is about the state, and stays until it is fixed, or about the change alone." }, subject: { $ref: "#/$defs/subject" }, facet: { type: ["string", "null"], description: "Tells several findings of one entry about one subject apart." }, message: { type: "string", description: "What is wrong." }, fails: { type: "boolean", description: "Whether it made the verdict fail." }, place: { $ref: "#/$defs/place" }, waiver: { description: "The waiver that covers it.", oneOf: [{ $ref: "#/$defs/waiver" }, { type: "null" }] }, outgrown: { description: "A waiver that is for it and covers less; null where there is none, or another covers it.", oneOf: [{ $ref: "#/$defs/waiver" }, { type: "null" }] }, held: { description: "What either was held to, where it has no ceiling and the finding would fail without it; null otherwise.", oneOf: [{ $ref: "#/$defs/held" }, { type: "null" }] } } }, schema46 = { title: "AuditLevel", enum: ["error", "warning", "note"], description: "A level of SARIF 2.1.0." }, schema47 = { title: "AuditSubject", type: "object", description: "What it is about.", additionalProperties: !1, required: ["kind", "name"], properties: { kind: { enum: ["estate", "site", "team", "label", "scope", "server", "volume", "volume-group", "file-system", "branch"], description: "The kind of thing." }, name: { type: "string", description: "Its name." } } }, schema49 = { title: "AuditWaiver", type: "object", description: "A waiver.", additionalProperties: !1, required: ["rule", "name", "subject", "kind", "upTo", "reason", "approvedBy", "from", "until", "file", "line"], properties: { rule: { type: "string", description: "The rule or entry it is for." }, name: { type: ["string", "null"], description: "The one entry that is meant; null where any of the rule is." }, subject: { type: "string", description: "The subject it is for." }, kind: { type: ["string", "null"], description: "The kind of that subject; null where any of the name is meant." }, upTo: { type: ["string", "null"], description: "The most that it covers, as it is written; null where it has no ceiling, and `held` in the finding says what it was held to." }, reason: { type: "string", description: "Why." }, approvedBy: { type: "string", description: "Who approved it." }, from: { $ref: "common.json#/$defs/date", description: "The first day on which it applies." }, until: { $ref: "common.json#/$defs/date", description: "The last day on which it applies." }, file: { type: "string", description: "The file it is in." }, line: { type: "integer", minimum: 0, description: "Its line." } } };
function validate27(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate27.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.rule === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.name === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.subject === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "subject" }, message: "must have required property 'subject'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.kind === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    if (data.upTo === void 0) {
      let err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "upTo" }, message: "must have required property 'upTo'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
    }
    if (data.reason === void 0) {
      let err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "reason" }, message: "must have required property 'reason'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
    }
    if (data.approvedBy === void 0) {
      let err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "approvedBy" }, message: "must have required property 'approvedBy'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
    }
    if (data.from === void 0) {
      let err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "from" }, message: "must have required property 'from'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
    }
    if (data.until === void 0) {
      let err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "until" }, message: "must have required property 'until'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
    }
    if (data.file === void 0) {
      let err9 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "file" }, message: "must have required property 'file'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
    }
    if (data.line === void 0) {
      let err10 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "line" }, message: "must have required property 'line'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
    }
    for (let key0 in data)
      if (!func1.call(schema49.properties, key0)) {
        let err11 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema49, data };
        vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
      }
    if (data.rule !== void 0) {
      let data0 = data.rule;
      if (typeof data0 != "string") {
        let err12 = { instancePath: instancePath + "/rule", schemaPath: "#/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema49.properties.rule.type, parentSchema: schema49.properties.rule, data: data0 };
        vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
      }
    }
    if (data.name !== void 0) {
      let data1 = data.name;
      if (typeof data1 != "string" && data1 !== null) {
        let err13 = { instancePath: instancePath + "/name", schemaPath: "#/properties/name/type", keyword: "type", params: { type: schema49.properties.name.type }, message: "must be string,null", schema: schema49.properties.name.type, parentSchema: schema49.properties.name, data: data1 };
        vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
      }
    }
    if (data.subject !== void 0) {
      let data2 = data.subject;
      if (typeof data2 != "string") {
        let err14 = { instancePath: instancePath + "/subject", schemaPath: "#/properties/subject/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema49.properties.subject.type, parentSchema: schema49.properties.subject, data: data2 };
        vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
      }
    }
    if (data.kind !== void 0) {
      let data3 = data.kind;
      if (typeof data3 != "string" && data3 !== null) {
        let err15 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/type", keyword: "type", params: { type: schema49.properties.kind.type }, message: "must be string,null", schema: schema49.properties.kind.type, parentSchema: schema49.properties.kind, data: data3 };
        vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
      }
    }
    if (data.upTo !== void 0) {
      let data4 = data.upTo;
      if (typeof data4 != "string" && data4 !== null) {
        let err16 = { instancePath: instancePath + "/upTo", schemaPath: "#/properties/upTo/type", keyword: "type", params: { type: schema49.properties.upTo.type }, message: "must be string,null", schema: schema49.properties.upTo.type, parentSchema: schema49.properties.upTo, data: data4 };
        vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
      }
    }
    if (data.reason !== void 0) {
      let data5 = data.reason;
      if (typeof data5 != "string") {
        let err17 = { instancePath: instancePath + "/reason", schemaPath: "#/properties/reason/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema49.properties.reason.type, parentSchema: schema49.properties.reason, data: data5 };
        vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
      }
    }
    if (data.approvedBy !== void 0) {
      let data6 = data.approvedBy;
      if (typeof data6 != "string") {
        let err18 = { instancePath: instancePath + "/approvedBy", schemaPath: "#/properties/approvedBy/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema49.properties.approvedBy.type, parentSchema: schema49.properties.approvedBy, data: data6 };
        vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
      }
    }
    if (data.from !== void 0) {
      let data7 = data.from;
      if (typeof data7 == "string") {
        if (!pattern4.test(data7)) {
          let err19 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data7 };
          vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
        }
      } else {
        let err20 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data7 };
        vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
      }
    }
    if (data.until !== void 0) {
      let data8 = data.until;
      if (typeof data8 == "string") {
        if (!pattern4.test(data8)) {
          let err21 = { instancePath: instancePath + "/until", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data8 };
          vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
        }
      } else {
        let err22 = { instancePath: instancePath + "/until", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data8 };
        vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
      }
    }
    if (data.file !== void 0) {
      let data9 = data.file;
      if (typeof data9 != "string") {
        let err23 = { instancePath: instancePath + "/file", schemaPath: "#/properties/file/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema49.properties.file.type, parentSchema: schema49.properties.file, data: data9 };
        vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
      }
    }
    if (data.line !== void 0) {
      let data10 = data.line;
      if (!(typeof data10 == "number" && !(data10 % 1) && !isNaN(data10) && isFinite(data10))) {
        let err24 = { instancePath: instancePath + "/line", schemaPath: "#/properties/line/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema49.properties.line.type, parentSchema: schema49.properties.line, data: data10 };
        vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
      }
      if (typeof data10 == "number" && isFinite(data10) && (data10 < 0 || isNaN(data10))) {
        let err25 = { instancePath: instancePath + "/line", schemaPath: "#/properties/line/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema49.properties.line, data: data10 };
        vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
      }
    }
  } else {
    let err26 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema49.type, parentSchema: schema49, data };
    vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
  }
  return validate27.errors = vErrors, errors === 0;
}
validate27.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema52 = { title: "AuditHeld", type: "object", description: "What a waiver without a ceiling was held to: what it has covered on main before.", additionalProperties: !1, required: ["kind", "covered"], properties: { kind: { enum: ["nothing yet", "as much", "less", "something else", "unknown"], description: "`nothing yet`: it had covered nothing, and covers this; `as much` as this or more; `less` than this; `something else`; `unknown` where history does not tell. Only the first two cover it." }, covered: { description: "What it had covered; null where that is nothing.", oneOf: [{ $ref: "#/$defs/covered" }, { type: "null" }] } } }, schema53 = { title: "AuditCovered", type: "object", description: "What a waiver without a ceiling first covered.", additionalProperties: !1, required: ["entry", "level", "subject", "facet", "message", "size", "amount", "number", "currency", "commit", "on"], properties: { entry: { type: "string", description: "The name of the entry." }, level: { $ref: "#/$defs/level" }, subject: { $ref: "#/$defs/subject" }, facet: { type: ["string", "null"], description: "As in a finding." }, message: { type: "string", description: "What was wrong." }, size: { type: ["string", "null"], description: "What it came to in bytes, where the rule measures a size; null otherwise." }, amount: { type: ["string", "null"], description: "What it came to in money a month, exact, where the rule measures an amount; null otherwise." }, number: { type: ["string", "null"], description: "What it came to as a number, where the rule measures one; null otherwise." }, currency: { type: "string", description: "The currency of the amount (ISO 4217)." }, commit: { type: "string", description: "The commit of main where it was first seen." }, on: { type: "string", description: "The day of that (RFC 3339 full-date)." } } };
function validate31(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate31.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.entry === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "entry" }, message: "must have required property 'entry'", schema: schema53.required, parentSchema: schema53, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.level === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "level" }, message: "must have required property 'level'", schema: schema53.required, parentSchema: schema53, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.subject === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "subject" }, message: "must have required property 'subject'", schema: schema53.required, parentSchema: schema53, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.facet === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "facet" }, message: "must have required property 'facet'", schema: schema53.required, parentSchema: schema53, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    if (data.message === void 0) {
      let err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "message" }, message: "must have required property 'message'", schema: schema53.required, parentSchema: schema53, data };
      vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
    }
    if (data.size === void 0) {
      let err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "size" }, message: "must have required property 'size'", schema: schema53.required, parentSchema: schema53, data };
      vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
    }
    if (data.amount === void 0) {
      let err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "amount" }, message: "must have required property 'amount'", schema: schema53.required, parentSchema: schema53, data };
      vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
    }
    if (data.number === void 0) {
      let err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "number" }, message: "must have required property 'number'", schema: schema53.required, parentSchema: schema53, data };
      vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
    }
    if (data.currency === void 0) {
      let err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "currency" }, message: "must have required property 'currency'", schema: schema53.required, parentSchema: schema53, data };
      vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
    }
    if (data.commit === void 0) {
      let err9 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "commit" }, message: "must have required property 'commit'", schema: schema53.required, parentSchema: schema53, data };
      vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
    }
    if (data.on === void 0) {
      let err10 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "on" }, message: "must have required property 'on'", schema: schema53.required, parentSchema: schema53, data };
      vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
    }
    for (let key0 in data)
      if (!func1.call(schema53.properties, key0)) {
        let err11 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema53, data };
        vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
      }
    if (data.entry !== void 0) {
      let data0 = data.entry;
      if (typeof data0 != "string") {
        let err12 = { instancePath: instancePath + "/entry", schemaPath: "#/properties/entry/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema53.properties.entry.type, parentSchema: schema53.properties.entry, data: data0 };
        vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
      }
    }
    if (data.level !== void 0) {
      let data1 = data.level;
      if (!(data1 === "error" || data1 === "warning" || data1 === "note")) {
        let err13 = { instancePath: instancePath + "/level", schemaPath: "#/$defs/level/enum", keyword: "enum", params: { allowedValues: schema46.enum }, message: "must be equal to one of the allowed values", schema: schema46.enum, parentSchema: schema46, data: data1 };
        vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
      }
    }
    if (data.subject !== void 0) {
      let data2 = data.subject;
      if (data2 && typeof data2 == "object" && !Array.isArray(data2)) {
        if (data2.kind === void 0) {
          let err14 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'", schema: schema47.required, parentSchema: schema47, data: data2 };
          vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
        }
        if (data2.name === void 0) {
          let err15 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema47.required, parentSchema: schema47, data: data2 };
          vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
        }
        for (let key1 in data2)
          if (!(key1 === "kind" || key1 === "name")) {
            let err16 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema47, data: data2 };
            vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
          }
        if (data2.kind !== void 0) {
          let data3 = data2.kind;
          if (!(data3 === "estate" || data3 === "site" || data3 === "team" || data3 === "label" || data3 === "scope" || data3 === "server" || data3 === "volume" || data3 === "volume-group" || data3 === "file-system" || data3 === "branch")) {
            let err17 = { instancePath: instancePath + "/subject/kind", schemaPath: "#/$defs/subject/properties/kind/enum", keyword: "enum", params: { allowedValues: schema47.properties.kind.enum }, message: "must be equal to one of the allowed values", schema: schema47.properties.kind.enum, parentSchema: schema47.properties.kind, data: data3 };
            vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
          }
        }
        if (data2.name !== void 0) {
          let data4 = data2.name;
          if (typeof data4 != "string") {
            let err18 = { instancePath: instancePath + "/subject/name", schemaPath: "#/$defs/subject/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema47.properties.name.type, parentSchema: schema47.properties.name, data: data4 };
            vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
          }
        }
      } else {
        let err19 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema47.type, parentSchema: schema47, data: data2 };
        vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
      }
    }
    if (data.facet !== void 0) {
      let data5 = data.facet;
      if (typeof data5 != "string" && data5 !== null) {
        let err20 = { instancePath: instancePath + "/facet", schemaPath: "#/properties/facet/type", keyword: "type", params: { type: schema53.properties.facet.type }, message: "must be string,null", schema: schema53.properties.facet.type, parentSchema: schema53.properties.facet, data: data5 };
        vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
      }
    }
    if (data.message !== void 0) {
      let data6 = data.message;
      if (typeof data6 != "string") {
        let err21 = { instancePath: instancePath + "/message", schemaPath: "#/properties/message/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema53.properties.message.type, parentSchema: schema53.properties.message, data: data6 };
        vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
      }
    }
    if (data.size !== void 0) {
      let data7 = data.size;
      if (typeof data7 != "string" && data7 !== null) {
        let err22 = { instancePath: instancePath + "/size", schemaPath: "#/properties/size/type", keyword: "type", params: { type: schema53.properties.size.type }, message: "must be string,null", schema: schema53.properties.size.type, parentSchema: schema53.properties.size, data: data7 };
        vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
      }
    }
    if (data.amount !== void 0) {
      let data8 = data.amount;
      if (typeof data8 != "string" && data8 !== null) {
        let err23 = { instancePath: instancePath + "/amount", schemaPath: "#/properties/amount/type", keyword: "type", params: { type: schema53.properties.amount.type }, message: "must be string,null", schema: schema53.properties.amount.type, parentSchema: schema53.properties.amount, data: data8 };
        vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
      }
    }
    if (data.number !== void 0) {
      let data9 = data.number;
      if (typeof data9 != "string" && data9 !== null) {
        let err24 = { instancePath: instancePath + "/number", schemaPath: "#/properties/number/type", keyword: "type", params: { type: schema53.properties.number.type }, message: "must be string,null", schema: schema53.properties.number.type, parentSchema: schema53.properties.number, data: data9 };
        vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
      }
    }
    if (data.currency !== void 0) {
      let data10 = data.currency;
      if (typeof data10 != "string") {
        let err25 = { instancePath: instancePath + "/currency", schemaPath: "#/properties/currency/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema53.properties.currency.type, parentSchema: schema53.properties.currency, data: data10 };
        vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
      }
    }
    if (data.commit !== void 0) {
      let data11 = data.commit;
      if (typeof data11 != "string") {
        let err26 = { instancePath: instancePath + "/commit", schemaPath: "#/properties/commit/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema53.properties.commit.type, parentSchema: schema53.properties.commit, data: data11 };
        vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
      }
    }
    if (data.on !== void 0) {
      let data12 = data.on;
      if (typeof data12 != "string") {
        let err27 = { instancePath: instancePath + "/on", schemaPath: "#/properties/on/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema53.properties.on.type, parentSchema: schema53.properties.on, data: data12 };
        vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
      }
    }
  } else {
    let err28 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema53.type, parentSchema: schema53, data };
    vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
  }
  return validate31.errors = vErrors, errors === 0;
}
validate31.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate30(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate30.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.kind === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'", schema: schema52.required, parentSchema: schema52, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.covered === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "covered" }, message: "must have required property 'covered'", schema: schema52.required, parentSchema: schema52, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "kind" || key0 === "covered")) {
        let err2 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema52, data };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    if (data.kind !== void 0) {
      let data0 = data.kind;
      if (!(data0 === "nothing yet" || data0 === "as much" || data0 === "less" || data0 === "something else" || data0 === "unknown")) {
        let err3 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema52.properties.kind.enum }, message: "must be equal to one of the allowed values", schema: schema52.properties.kind.enum, parentSchema: schema52.properties.kind, data: data0 };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    }
    if (data.covered !== void 0) {
      let data1 = data.covered, _errs4 = errors, valid1 = !1, passing0 = null, _errs5 = errors;
      validate31(data1, { instancePath: instancePath + "/covered", parentData: data, parentDataProperty: "covered", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors), errors = vErrors.length);
      var _valid0 = _errs5 === errors;
      _valid0 && (valid1 = !0, passing0 = 0);
      let _errs6 = errors;
      if (data1 !== null) {
        let err4 = { instancePath: instancePath + "/covered", schemaPath: "#/properties/covered/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema52.properties.covered.oneOf[1].type, parentSchema: schema52.properties.covered.oneOf[1], data: data1 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
      var _valid0 = _errs6 === errors;
      if (_valid0 && valid1 ? (valid1 = !1, passing0 = [passing0, 1]) : _valid0 && (valid1 = !0, passing0 = 1), valid1)
        errors = _errs4, vErrors !== null && (_errs4 ? vErrors.length = _errs4 : vErrors = null);
      else {
        let err5 = { instancePath: instancePath + "/covered", schemaPath: "#/properties/covered/oneOf", keyword: "oneOf", params: { passingSchemas: passing0 }, message: "must match exactly one schema in oneOf", schema: schema52.properties.covered.oneOf, parentSchema: schema52.properties.covered, data: data1 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
    }
  } else {
    let err6 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema52.type, parentSchema: schema52, data };
    vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
  }
  return validate30.errors = vErrors, errors === 0;
}
validate30.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate26(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate26.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.rule === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.entry === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "entry" }, message: "must have required property 'entry'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.level === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "level" }, message: "must have required property 'level'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.baselineState === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "baselineState" }, message: "must have required property 'baselineState'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    if (data.about === void 0) {
      let err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "about" }, message: "must have required property 'about'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
    }
    if (data.subject === void 0) {
      let err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "subject" }, message: "must have required property 'subject'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
    }
    if (data.facet === void 0) {
      let err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "facet" }, message: "must have required property 'facet'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
    }
    if (data.message === void 0) {
      let err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "message" }, message: "must have required property 'message'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
    }
    if (data.fails === void 0) {
      let err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "fails" }, message: "must have required property 'fails'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
    }
    if (data.place === void 0) {
      let err9 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "place" }, message: "must have required property 'place'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
    }
    if (data.waiver === void 0) {
      let err10 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "waiver" }, message: "must have required property 'waiver'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
    }
    if (data.outgrown === void 0) {
      let err11 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "outgrown" }, message: "must have required property 'outgrown'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
    }
    if (data.held === void 0) {
      let err12 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "held" }, message: "must have required property 'held'", schema: schema45.required, parentSchema: schema45, data };
      vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
    }
    for (let key0 in data)
      if (!func1.call(schema45.properties, key0)) {
        let err13 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema45, data };
        vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
      }
    if (data.rule !== void 0) {
      let data0 = data.rule;
      if (typeof data0 != "string") {
        let err14 = { instancePath: instancePath + "/rule", schemaPath: "#/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema45.properties.rule.type, parentSchema: schema45.properties.rule, data: data0 };
        vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
      }
    }
    if (data.entry !== void 0) {
      let data1 = data.entry;
      if (typeof data1 != "string") {
        let err15 = { instancePath: instancePath + "/entry", schemaPath: "#/properties/entry/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema45.properties.entry.type, parentSchema: schema45.properties.entry, data: data1 };
        vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
      }
    }
    if (data.level !== void 0) {
      let data2 = data.level;
      if (!(data2 === "error" || data2 === "warning" || data2 === "note")) {
        let err16 = { instancePath: instancePath + "/level", schemaPath: "#/$defs/level/enum", keyword: "enum", params: { allowedValues: schema46.enum }, message: "must be equal to one of the allowed values", schema: schema46.enum, parentSchema: schema46, data: data2 };
        vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
      }
    }
    if (data.baselineState !== void 0) {
      let data3 = data.baselineState;
      if (!(data3 === "new" || data3 === "updated" || data3 === "absent")) {
        let err17 = { instancePath: instancePath + "/baselineState", schemaPath: "#/properties/baselineState/enum", keyword: "enum", params: { allowedValues: schema45.properties.baselineState.enum }, message: "must be equal to one of the allowed values", schema: schema45.properties.baselineState.enum, parentSchema: schema45.properties.baselineState, data: data3 };
        vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
      }
    }
    if (data.about !== void 0) {
      let data4 = data.about;
      if (!(data4 === "state" || data4 === "change")) {
        let err18 = { instancePath: instancePath + "/about", schemaPath: "#/properties/about/enum", keyword: "enum", params: { allowedValues: schema45.properties.about.enum }, message: "must be equal to one of the allowed values", schema: schema45.properties.about.enum, parentSchema: schema45.properties.about, data: data4 };
        vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
      }
    }
    if (data.subject !== void 0) {
      let data5 = data.subject;
      if (data5 && typeof data5 == "object" && !Array.isArray(data5)) {
        if (data5.kind === void 0) {
          let err19 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'", schema: schema47.required, parentSchema: schema47, data: data5 };
          vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
        }
        if (data5.name === void 0) {
          let err20 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema47.required, parentSchema: schema47, data: data5 };
          vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
        }
        for (let key1 in data5)
          if (!(key1 === "kind" || key1 === "name")) {
            let err21 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema47, data: data5 };
            vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
          }
        if (data5.kind !== void 0) {
          let data6 = data5.kind;
          if (!(data6 === "estate" || data6 === "site" || data6 === "team" || data6 === "label" || data6 === "scope" || data6 === "server" || data6 === "volume" || data6 === "volume-group" || data6 === "file-system" || data6 === "branch")) {
            let err22 = { instancePath: instancePath + "/subject/kind", schemaPath: "#/$defs/subject/properties/kind/enum", keyword: "enum", params: { allowedValues: schema47.properties.kind.enum }, message: "must be equal to one of the allowed values", schema: schema47.properties.kind.enum, parentSchema: schema47.properties.kind, data: data6 };
            vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
          }
        }
        if (data5.name !== void 0) {
          let data7 = data5.name;
          if (typeof data7 != "string") {
            let err23 = { instancePath: instancePath + "/subject/name", schemaPath: "#/$defs/subject/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema47.properties.name.type, parentSchema: schema47.properties.name, data: data7 };
            vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
          }
        }
      } else {
        let err24 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema47.type, parentSchema: schema47, data: data5 };
        vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
      }
    }
    if (data.facet !== void 0) {
      let data8 = data.facet;
      if (typeof data8 != "string" && data8 !== null) {
        let err25 = { instancePath: instancePath + "/facet", schemaPath: "#/properties/facet/type", keyword: "type", params: { type: schema45.properties.facet.type }, message: "must be string,null", schema: schema45.properties.facet.type, parentSchema: schema45.properties.facet, data: data8 };
        vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
      }
    }
    if (data.message !== void 0) {
      let data9 = data.message;
      if (typeof data9 != "string") {
        let err26 = { instancePath: instancePath + "/message", schemaPath: "#/properties/message/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema45.properties.message.type, parentSchema: schema45.properties.message, data: data9 };
        vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
      }
    }
    if (data.fails !== void 0) {
      let data10 = data.fails;
      if (typeof data10 != "boolean") {
        let err27 = { instancePath: instancePath + "/fails", schemaPath: "#/properties/fails/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema45.properties.fails.type, parentSchema: schema45.properties.fails, data: data10 };
        vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
      }
    }
    if (data.place !== void 0) {
      let data11 = data.place;
      if (data11 && typeof data11 == "object" && !Array.isArray(data11)) {
        if (data11.revision === void 0) {
          let err28 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/required", keyword: "required", params: { missingProperty: "revision" }, message: "must have required property 'revision'", schema: schema40.required, parentSchema: schema40, data: data11 };
          vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
        }
        if (data11.file === void 0) {
          let err29 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/required", keyword: "required", params: { missingProperty: "file" }, message: "must have required property 'file'", schema: schema40.required, parentSchema: schema40, data: data11 };
          vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
        }
        if (data11.line === void 0) {
          let err30 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/required", keyword: "required", params: { missingProperty: "line" }, message: "must have required property 'line'", schema: schema40.required, parentSchema: schema40, data: data11 };
          vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
        }
        if (data11.column === void 0) {
          let err31 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/required", keyword: "required", params: { missingProperty: "column" }, message: "must have required property 'column'", schema: schema40.required, parentSchema: schema40, data: data11 };
          vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
        }
        for (let key2 in data11)
          if (!(key2 === "revision" || key2 === "file" || key2 === "line" || key2 === "column")) {
            let err32 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema40, data: data11 };
            vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
          }
        if (data11.revision !== void 0) {
          let data12 = data11.revision;
          if (!(data12 === "base" || data12 === "head" || data12 === null)) {
            let err33 = { instancePath: instancePath + "/place/revision", schemaPath: "#/$defs/place/properties/revision/enum", keyword: "enum", params: { allowedValues: schema40.properties.revision.enum }, message: "must be equal to one of the allowed values", schema: schema40.properties.revision.enum, parentSchema: schema40.properties.revision, data: data12 };
            vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
          }
        }
        if (data11.file !== void 0) {
          let data13 = data11.file;
          if (typeof data13 != "string") {
            let err34 = { instancePath: instancePath + "/place/file", schemaPath: "#/$defs/place/properties/file/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema40.properties.file.type, parentSchema: schema40.properties.file, data: data13 };
            vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
          }
        }
        if (data11.line !== void 0) {
          let data14 = data11.line;
          if (!(typeof data14 == "number" && !(data14 % 1) && !isNaN(data14) && isFinite(data14))) {
            let err35 = { instancePath: instancePath + "/place/line", schemaPath: "#/$defs/place/properties/line/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema40.properties.line.type, parentSchema: schema40.properties.line, data: data14 };
            vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
          }
          if (typeof data14 == "number" && isFinite(data14) && (data14 < 0 || isNaN(data14))) {
            let err36 = { instancePath: instancePath + "/place/line", schemaPath: "#/$defs/place/properties/line/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema40.properties.line, data: data14 };
            vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
          }
        }
        if (data11.column !== void 0) {
          let data15 = data11.column;
          if (!(typeof data15 == "number" && !(data15 % 1) && !isNaN(data15) && isFinite(data15))) {
            let err37 = { instancePath: instancePath + "/place/column", schemaPath: "#/$defs/place/properties/column/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema40.properties.column.type, parentSchema: schema40.properties.column, data: data15 };
            vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
          }
          if (typeof data15 == "number" && isFinite(data15) && (data15 < 0 || isNaN(data15))) {
            let err38 = { instancePath: instancePath + "/place/column", schemaPath: "#/$defs/place/properties/column/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema40.properties.column, data: data15 };
            vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
          }
        }
      } else {
        let err39 = { instancePath: instancePath + "/place", schemaPath: "#/$defs/place/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema40.type, parentSchema: schema40, data: data11 };
        vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
      }
    }
    if (data.waiver !== void 0) {
      let data16 = data.waiver, _errs35 = errors, valid6 = !1, passing0 = null, _errs36 = errors;
      validate27(data16, { instancePath: instancePath + "/waiver", parentData: data, parentDataProperty: "waiver", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate27.errors : vErrors.concat(validate27.errors), errors = vErrors.length);
      var _valid0 = _errs36 === errors;
      _valid0 && (valid6 = !0, passing0 = 0);
      let _errs37 = errors;
      if (data16 !== null) {
        let err40 = { instancePath: instancePath + "/waiver", schemaPath: "#/properties/waiver/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema45.properties.waiver.oneOf[1].type, parentSchema: schema45.properties.waiver.oneOf[1], data: data16 };
        vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
      }
      var _valid0 = _errs37 === errors;
      if (_valid0 && valid6 ? (valid6 = !1, passing0 = [passing0, 1]) : _valid0 && (valid6 = !0, passing0 = 1), valid6)
        errors = _errs35, vErrors !== null && (_errs35 ? vErrors.length = _errs35 : vErrors = null);
      else {
        let err41 = { instancePath: instancePath + "/waiver", schemaPath: "#/properties/waiver/oneOf", keyword: "oneOf", params: { passingSchemas: passing0 }, message: "must match exactly one schema in oneOf", schema: schema45.properties.waiver.oneOf, parentSchema: schema45.properties.waiver, data: data16 };
        vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
      }
    }
    if (data.outgrown !== void 0) {
      let data17 = data.outgrown, _errs40 = errors, valid7 = !1, passing1 = null, _errs41 = errors;
      validate27(data17, { instancePath: instancePath + "/outgrown", parentData: data, parentDataProperty: "outgrown", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate27.errors : vErrors.concat(validate27.errors), errors = vErrors.length);
      var _valid1 = _errs41 === errors;
      _valid1 && (valid7 = !0, passing1 = 0);
      let _errs42 = errors;
      if (data17 !== null) {
        let err42 = { instancePath: instancePath + "/outgrown", schemaPath: "#/properties/outgrown/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema45.properties.outgrown.oneOf[1].type, parentSchema: schema45.properties.outgrown.oneOf[1], data: data17 };
        vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
      }
      var _valid1 = _errs42 === errors;
      if (_valid1 && valid7 ? (valid7 = !1, passing1 = [passing1, 1]) : _valid1 && (valid7 = !0, passing1 = 1), valid7)
        errors = _errs40, vErrors !== null && (_errs40 ? vErrors.length = _errs40 : vErrors = null);
      else {
        let err43 = { instancePath: instancePath + "/outgrown", schemaPath: "#/properties/outgrown/oneOf", keyword: "oneOf", params: { passingSchemas: passing1 }, message: "must match exactly one schema in oneOf", schema: schema45.properties.outgrown.oneOf, parentSchema: schema45.properties.outgrown, data: data17 };
        vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
      }
    }
    if (data.held !== void 0) {
      let data18 = data.held, _errs45 = errors, valid8 = !1, passing2 = null, _errs46 = errors;
      validate30(data18, { instancePath: instancePath + "/held", parentData: data, parentDataProperty: "held", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors), errors = vErrors.length);
      var _valid2 = _errs46 === errors;
      _valid2 && (valid8 = !0, passing2 = 0);
      let _errs47 = errors;
      if (data18 !== null) {
        let err44 = { instancePath: instancePath + "/held", schemaPath: "#/properties/held/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema45.properties.held.oneOf[1].type, parentSchema: schema45.properties.held.oneOf[1], data: data18 };
        vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
      }
      var _valid2 = _errs47 === errors;
      if (_valid2 && valid8 ? (valid8 = !1, passing2 = [passing2, 1]) : _valid2 && (valid8 = !0, passing2 = 1), valid8)
        errors = _errs45, vErrors !== null && (_errs45 ? vErrors.length = _errs45 : vErrors = null);
      else {
        let err45 = { instancePath: instancePath + "/held", schemaPath: "#/properties/held/oneOf", keyword: "oneOf", params: { passingSchemas: passing2 }, message: "must match exactly one schema in oneOf", schema: schema45.properties.held.oneOf, parentSchema: schema45.properties.held, data: data18 };
        vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
      }
    }
  } else {
    let err46 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema45.type, parentSchema: schema45, data };
    vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
  }
  return validate26.errors = vErrors, errors === 0;
}
validate26.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema57 = { title: "AuditBetween", type: "object", description: "What was new and what was fixed on the base since the record before, without a change of storage: because of the date, the policy, the prices or the readings.", additionalProperties: !1, required: ["began", "new", "fixed"], properties: { began: { type: "boolean", description: "Whether the replay began here; `new` is then all that was open at the beginning." }, new: { type: "array", description: "Findings that were not there before.", items: { $ref: "#/$defs/brief" } }, fixed: { type: "array", description: "Findings that are no longer there.", items: { $ref: "#/$defs/brief" } } } }, schema58 = { title: "AuditStanding", type: "object", description: "A finding that was there without a change of storage.", additionalProperties: !1, required: ["rule", "entry", "level", "subject", "facet", "message"], properties: { rule: { type: "string", description: "The rule." }, entry: { type: "string", description: "The name of the entry." }, level: { $ref: "#/$defs/level" }, subject: { $ref: "#/$defs/subject" }, facet: { type: ["string", "null"], description: "As in a finding." }, message: { type: "string", description: "What is wrong." } } };
function validate36(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate36.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.rule === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema58.required, parentSchema: schema58, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.entry === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "entry" }, message: "must have required property 'entry'", schema: schema58.required, parentSchema: schema58, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.level === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "level" }, message: "must have required property 'level'", schema: schema58.required, parentSchema: schema58, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.subject === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "subject" }, message: "must have required property 'subject'", schema: schema58.required, parentSchema: schema58, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    if (data.facet === void 0) {
      let err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "facet" }, message: "must have required property 'facet'", schema: schema58.required, parentSchema: schema58, data };
      vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
    }
    if (data.message === void 0) {
      let err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "message" }, message: "must have required property 'message'", schema: schema58.required, parentSchema: schema58, data };
      vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "rule" || key0 === "entry" || key0 === "level" || key0 === "subject" || key0 === "facet" || key0 === "message")) {
        let err6 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema58, data };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    if (data.rule !== void 0) {
      let data0 = data.rule;
      if (typeof data0 != "string") {
        let err7 = { instancePath: instancePath + "/rule", schemaPath: "#/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema58.properties.rule.type, parentSchema: schema58.properties.rule, data: data0 };
        vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
      }
    }
    if (data.entry !== void 0) {
      let data1 = data.entry;
      if (typeof data1 != "string") {
        let err8 = { instancePath: instancePath + "/entry", schemaPath: "#/properties/entry/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema58.properties.entry.type, parentSchema: schema58.properties.entry, data: data1 };
        vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
      }
    }
    if (data.level !== void 0) {
      let data2 = data.level;
      if (!(data2 === "error" || data2 === "warning" || data2 === "note")) {
        let err9 = { instancePath: instancePath + "/level", schemaPath: "#/$defs/level/enum", keyword: "enum", params: { allowedValues: schema46.enum }, message: "must be equal to one of the allowed values", schema: schema46.enum, parentSchema: schema46, data: data2 };
        vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
      }
    }
    if (data.subject !== void 0) {
      let data3 = data.subject;
      if (data3 && typeof data3 == "object" && !Array.isArray(data3)) {
        if (data3.kind === void 0) {
          let err10 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'", schema: schema47.required, parentSchema: schema47, data: data3 };
          vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
        }
        if (data3.name === void 0) {
          let err11 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema47.required, parentSchema: schema47, data: data3 };
          vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
        }
        for (let key1 in data3)
          if (!(key1 === "kind" || key1 === "name")) {
            let err12 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema47, data: data3 };
            vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
          }
        if (data3.kind !== void 0) {
          let data4 = data3.kind;
          if (!(data4 === "estate" || data4 === "site" || data4 === "team" || data4 === "label" || data4 === "scope" || data4 === "server" || data4 === "volume" || data4 === "volume-group" || data4 === "file-system" || data4 === "branch")) {
            let err13 = { instancePath: instancePath + "/subject/kind", schemaPath: "#/$defs/subject/properties/kind/enum", keyword: "enum", params: { allowedValues: schema47.properties.kind.enum }, message: "must be equal to one of the allowed values", schema: schema47.properties.kind.enum, parentSchema: schema47.properties.kind, data: data4 };
            vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
          }
        }
        if (data3.name !== void 0) {
          let data5 = data3.name;
          if (typeof data5 != "string") {
            let err14 = { instancePath: instancePath + "/subject/name", schemaPath: "#/$defs/subject/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema47.properties.name.type, parentSchema: schema47.properties.name, data: data5 };
            vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
          }
        }
      } else {
        let err15 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema47.type, parentSchema: schema47, data: data3 };
        vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
      }
    }
    if (data.facet !== void 0) {
      let data6 = data.facet;
      if (typeof data6 != "string" && data6 !== null) {
        let err16 = { instancePath: instancePath + "/facet", schemaPath: "#/properties/facet/type", keyword: "type", params: { type: schema58.properties.facet.type }, message: "must be string,null", schema: schema58.properties.facet.type, parentSchema: schema58.properties.facet, data: data6 };
        vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
      }
    }
    if (data.message !== void 0) {
      let data7 = data.message;
      if (typeof data7 != "string") {
        let err17 = { instancePath: instancePath + "/message", schemaPath: "#/properties/message/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema58.properties.message.type, parentSchema: schema58.properties.message, data: data7 };
        vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
      }
    }
  } else {
    let err18 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema58.type, parentSchema: schema58, data };
    vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
  }
  return validate36.errors = vErrors, errors === 0;
}
validate36.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate35(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate35.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.began === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "began" }, message: "must have required property 'began'", schema: schema57.required, parentSchema: schema57, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.new === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "new" }, message: "must have required property 'new'", schema: schema57.required, parentSchema: schema57, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.fixed === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "fixed" }, message: "must have required property 'fixed'", schema: schema57.required, parentSchema: schema57, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "began" || key0 === "new" || key0 === "fixed")) {
        let err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema57, data };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    if (data.began !== void 0) {
      let data0 = data.began;
      if (typeof data0 != "boolean") {
        let err4 = { instancePath: instancePath + "/began", schemaPath: "#/properties/began/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema57.properties.began.type, parentSchema: schema57.properties.began, data: data0 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
    if (data.new !== void 0) {
      let data1 = data.new;
      if (Array.isArray(data1)) {
        let len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++)
          validate36(data1[i0], { instancePath: instancePath + "/new/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate36.errors : vErrors.concat(validate36.errors), errors = vErrors.length);
      } else {
        let err5 = { instancePath: instancePath + "/new", schemaPath: "#/properties/new/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema57.properties.new.type, parentSchema: schema57.properties.new, data: data1 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
    }
    if (data.fixed !== void 0) {
      let data3 = data.fixed;
      if (Array.isArray(data3)) {
        let len1 = data3.length;
        for (let i1 = 0; i1 < len1; i1++)
          validate36(data3[i1], { instancePath: instancePath + "/fixed/" + i1, parentData: data3, parentDataProperty: i1, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate36.errors : vErrors.concat(validate36.errors), errors = vErrors.length);
      } else {
        let err6 = { instancePath: instancePath + "/fixed", schemaPath: "#/properties/fixed/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema57.properties.fixed.type, parentSchema: schema57.properties.fixed, data: data3 };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    }
  } else {
    let err7 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema57.type, parentSchema: schema57, data };
    vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
  }
  return validate35.errors = vErrors, errors === 0;
}
validate35.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema61 = { title: "AuditRenamed", type: "object", description: "A finding that continues under another name.", additionalProperties: !1, required: ["entry", "from", "to"], properties: { entry: { type: "string", description: "The name of the entry." }, from: { $ref: "#/$defs/named" }, to: { $ref: "#/$defs/named" } } }, schema62 = { title: "AuditNamed", type: "object", description: "What identifies a finding.", additionalProperties: !1, required: ["subject", "facet"], properties: { subject: { $ref: "#/$defs/subject" }, facet: { type: ["string", "null"], description: "As in a finding." } } };
function validate41(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate41.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.subject === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "subject" }, message: "must have required property 'subject'", schema: schema62.required, parentSchema: schema62, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.facet === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "facet" }, message: "must have required property 'facet'", schema: schema62.required, parentSchema: schema62, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "subject" || key0 === "facet")) {
        let err2 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema62, data };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    if (data.subject !== void 0) {
      let data0 = data.subject;
      if (data0 && typeof data0 == "object" && !Array.isArray(data0)) {
        if (data0.kind === void 0) {
          let err3 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'", schema: schema47.required, parentSchema: schema47, data: data0 };
          vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
        }
        if (data0.name === void 0) {
          let err4 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema47.required, parentSchema: schema47, data: data0 };
          vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
        }
        for (let key1 in data0)
          if (!(key1 === "kind" || key1 === "name")) {
            let err5 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema47, data: data0 };
            vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
          }
        if (data0.kind !== void 0) {
          let data1 = data0.kind;
          if (!(data1 === "estate" || data1 === "site" || data1 === "team" || data1 === "label" || data1 === "scope" || data1 === "server" || data1 === "volume" || data1 === "volume-group" || data1 === "file-system" || data1 === "branch")) {
            let err6 = { instancePath: instancePath + "/subject/kind", schemaPath: "#/$defs/subject/properties/kind/enum", keyword: "enum", params: { allowedValues: schema47.properties.kind.enum }, message: "must be equal to one of the allowed values", schema: schema47.properties.kind.enum, parentSchema: schema47.properties.kind, data: data1 };
            vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
          }
        }
        if (data0.name !== void 0) {
          let data2 = data0.name;
          if (typeof data2 != "string") {
            let err7 = { instancePath: instancePath + "/subject/name", schemaPath: "#/$defs/subject/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema47.properties.name.type, parentSchema: schema47.properties.name, data: data2 };
            vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
          }
        }
      } else {
        let err8 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema47.type, parentSchema: schema47, data: data0 };
        vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
      }
    }
    if (data.facet !== void 0) {
      let data3 = data.facet;
      if (typeof data3 != "string" && data3 !== null) {
        let err9 = { instancePath: instancePath + "/facet", schemaPath: "#/properties/facet/type", keyword: "type", params: { type: schema62.properties.facet.type }, message: "must be string,null", schema: schema62.properties.facet.type, parentSchema: schema62.properties.facet, data: data3 };
        vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
      }
    }
  } else {
    let err10 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema62.type, parentSchema: schema62, data };
    vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
  }
  return validate41.errors = vErrors, errors === 0;
}
validate41.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate40(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate40.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.entry === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "entry" }, message: "must have required property 'entry'", schema: schema61.required, parentSchema: schema61, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.from === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "from" }, message: "must have required property 'from'", schema: schema61.required, parentSchema: schema61, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.to === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "to" }, message: "must have required property 'to'", schema: schema61.required, parentSchema: schema61, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "entry" || key0 === "from" || key0 === "to")) {
        let err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema61, data };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    if (data.entry !== void 0) {
      let data0 = data.entry;
      if (typeof data0 != "string") {
        let err4 = { instancePath: instancePath + "/entry", schemaPath: "#/properties/entry/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema61.properties.entry.type, parentSchema: schema61.properties.entry, data: data0 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
    data.from !== void 0 && (validate41(data.from, { instancePath: instancePath + "/from", parentData: data, parentDataProperty: "from", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors), errors = vErrors.length)), data.to !== void 0 && (validate41(data.to, { instancePath: instancePath + "/to", parentData: data, parentDataProperty: "to", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors), errors = vErrors.length));
  } else {
    let err5 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema61.type, parentSchema: schema61, data };
    vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
  }
  return validate40.errors = vErrors, errors === 0;
}
validate40.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema64 = { title: "AuditWaiverUse", type: "object", description: "How a waiver was used in this judgement.", additionalProperties: !1, required: ["state", "waiver", "findings", "writeInstead"], properties: { state: { enum: ["used", "outgrown", "expired", "written otherwise"], description: "`used`: it waived a finding; `outgrown`: a finding that it was for was beyond what it covers; `expired`: its date was over, and there still was a finding that it was for; `written otherwise`: only the writing of its subject kept it from a finding." }, waiver: { $ref: "#/$defs/waiver" }, findings: { type: "integer", minimum: 0, description: "How many findings." }, writeInstead: { type: ["string", "null"], description: "The waiver's line as it would have to be written to be for a finding of this judgement, where only the writing of its subject keeps it from that; null otherwise." } } };
function validate45(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate45.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.state === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "state" }, message: "must have required property 'state'", schema: schema64.required, parentSchema: schema64, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.waiver === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "waiver" }, message: "must have required property 'waiver'", schema: schema64.required, parentSchema: schema64, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.findings === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "findings" }, message: "must have required property 'findings'", schema: schema64.required, parentSchema: schema64, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.writeInstead === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "writeInstead" }, message: "must have required property 'writeInstead'", schema: schema64.required, parentSchema: schema64, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "state" || key0 === "waiver" || key0 === "findings" || key0 === "writeInstead")) {
        let err4 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema64, data };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    if (data.state !== void 0) {
      let data0 = data.state;
      if (!(data0 === "used" || data0 === "outgrown" || data0 === "expired" || data0 === "written otherwise")) {
        let err5 = { instancePath: instancePath + "/state", schemaPath: "#/properties/state/enum", keyword: "enum", params: { allowedValues: schema64.properties.state.enum }, message: "must be equal to one of the allowed values", schema: schema64.properties.state.enum, parentSchema: schema64.properties.state, data: data0 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
    }
    if (data.waiver !== void 0 && (validate27(data.waiver, { instancePath: instancePath + "/waiver", parentData: data, parentDataProperty: "waiver", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate27.errors : vErrors.concat(validate27.errors), errors = vErrors.length)), data.findings !== void 0) {
      let data2 = data.findings;
      if (!(typeof data2 == "number" && !(data2 % 1) && !isNaN(data2) && isFinite(data2))) {
        let err6 = { instancePath: instancePath + "/findings", schemaPath: "#/properties/findings/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema64.properties.findings.type, parentSchema: schema64.properties.findings, data: data2 };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
      if (typeof data2 == "number" && isFinite(data2) && (data2 < 0 || isNaN(data2))) {
        let err7 = { instancePath: instancePath + "/findings", schemaPath: "#/properties/findings/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema64.properties.findings, data: data2 };
        vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
      }
    }
    if (data.writeInstead !== void 0) {
      let data3 = data.writeInstead;
      if (typeof data3 != "string" && data3 !== null) {
        let err8 = { instancePath: instancePath + "/writeInstead", schemaPath: "#/properties/writeInstead/type", keyword: "type", params: { type: schema64.properties.writeInstead.type }, message: "must be string,null", schema: schema64.properties.writeInstead.type, parentSchema: schema64.properties.writeInstead, data: data3 };
        vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
      }
    }
  } else {
    let err9 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema64.type, parentSchema: schema64, data };
    vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
  }
  return validate45.errors = vErrors, errors === 0;
}
validate45.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema65 = { title: "AuditCost", type: "object", description: "What the estate costs a month.", additionalProperties: !1, required: ["currencyBefore", "currency", "before", "after", "difference", "teams"], properties: { currencyBefore: { type: "string", description: "The currency of what it cost before (ISO 4217)." }, currency: { type: "string", description: "ISO 4217." }, before: { $ref: "#/$defs/money", description: "Before the commit." }, after: { $ref: "#/$defs/money", description: "After it." }, difference: { type: ["string", "null"], description: "The difference; null where before and after are in two currencies." }, teams: { type: "array", description: "By team, in order of name.", items: { $ref: "#/$defs/team" } } } }, schema66 = { title: "AuditMoney", type: "string", pattern: "^-?[0-9]+(\\.[0-9]+)?$", description: "An exact amount, as a decimal string." }, pattern7 = new RegExp("^-?[0-9]+(\\.[0-9]+)?$", "u"), schema68 = { title: "AuditTeam", type: "object", description: "The monthly cost of a team's storage.", additionalProperties: !1, required: ["team", "before", "after", "difference"], properties: { team: { type: ["string", "null"], description: "The team; null for what belongs to none." }, before: { $ref: "#/$defs/money", description: "Before the commit." }, after: { $ref: "#/$defs/money", description: "After it." }, difference: { type: ["string", "null"], description: "The difference; null where before and after are in two currencies." } } };
function validate49(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate49.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.team === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "team" }, message: "must have required property 'team'", schema: schema68.required, parentSchema: schema68, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.before === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "before" }, message: "must have required property 'before'", schema: schema68.required, parentSchema: schema68, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.after === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "after" }, message: "must have required property 'after'", schema: schema68.required, parentSchema: schema68, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.difference === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "difference" }, message: "must have required property 'difference'", schema: schema68.required, parentSchema: schema68, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "team" || key0 === "before" || key0 === "after" || key0 === "difference")) {
        let err4 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema68, data };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    if (data.team !== void 0) {
      let data0 = data.team;
      if (typeof data0 != "string" && data0 !== null) {
        let err5 = { instancePath: instancePath + "/team", schemaPath: "#/properties/team/type", keyword: "type", params: { type: schema68.properties.team.type }, message: "must be string,null", schema: schema68.properties.team.type, parentSchema: schema68.properties.team, data: data0 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
    }
    if (data.before !== void 0) {
      let data1 = data.before;
      if (typeof data1 == "string") {
        if (!pattern7.test(data1)) {
          let err6 = { instancePath: instancePath + "/before", schemaPath: "#/$defs/money/pattern", keyword: "pattern", params: { pattern: "^-?[0-9]+(\\.[0-9]+)?$" }, message: 'must match pattern "^-?[0-9]+(\\.[0-9]+)?$"', schema: "^-?[0-9]+(\\.[0-9]+)?$", parentSchema: schema66, data: data1 };
          vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
        }
      } else {
        let err7 = { instancePath: instancePath + "/before", schemaPath: "#/$defs/money/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema66.type, parentSchema: schema66, data: data1 };
        vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
      }
    }
    if (data.after !== void 0) {
      let data2 = data.after;
      if (typeof data2 == "string") {
        if (!pattern7.test(data2)) {
          let err8 = { instancePath: instancePath + "/after", schemaPath: "#/$defs/money/pattern", keyword: "pattern", params: { pattern: "^-?[0-9]+(\\.[0-9]+)?$" }, message: 'must match pattern "^-?[0-9]+(\\.[0-9]+)?$"', schema: "^-?[0-9]+(\\.[0-9]+)?$", parentSchema: schema66, data: data2 };
          vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
        }
      } else {
        let err9 = { instancePath: instancePath + "/after", schemaPath: "#/$defs/money/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema66.type, parentSchema: schema66, data: data2 };
        vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
      }
    }
    if (data.difference !== void 0) {
      let data3 = data.difference;
      if (typeof data3 != "string" && data3 !== null) {
        let err10 = { instancePath: instancePath + "/difference", schemaPath: "#/properties/difference/type", keyword: "type", params: { type: schema68.properties.difference.type }, message: "must be string,null", schema: schema68.properties.difference.type, parentSchema: schema68.properties.difference, data: data3 };
        vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
      }
    }
  } else {
    let err11 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema68.type, parentSchema: schema68, data };
    vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
  }
  return validate49.errors = vErrors, errors === 0;
}
validate49.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate48(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate48.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.currencyBefore === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "currencyBefore" }, message: "must have required property 'currencyBefore'", schema: schema65.required, parentSchema: schema65, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.currency === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "currency" }, message: "must have required property 'currency'", schema: schema65.required, parentSchema: schema65, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.before === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "before" }, message: "must have required property 'before'", schema: schema65.required, parentSchema: schema65, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.after === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "after" }, message: "must have required property 'after'", schema: schema65.required, parentSchema: schema65, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    if (data.difference === void 0) {
      let err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "difference" }, message: "must have required property 'difference'", schema: schema65.required, parentSchema: schema65, data };
      vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
    }
    if (data.teams === void 0) {
      let err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "teams" }, message: "must have required property 'teams'", schema: schema65.required, parentSchema: schema65, data };
      vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "currencyBefore" || key0 === "currency" || key0 === "before" || key0 === "after" || key0 === "difference" || key0 === "teams")) {
        let err6 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema65, data };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    if (data.currencyBefore !== void 0) {
      let data0 = data.currencyBefore;
      if (typeof data0 != "string") {
        let err7 = { instancePath: instancePath + "/currencyBefore", schemaPath: "#/properties/currencyBefore/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema65.properties.currencyBefore.type, parentSchema: schema65.properties.currencyBefore, data: data0 };
        vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
      }
    }
    if (data.currency !== void 0) {
      let data1 = data.currency;
      if (typeof data1 != "string") {
        let err8 = { instancePath: instancePath + "/currency", schemaPath: "#/properties/currency/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema65.properties.currency.type, parentSchema: schema65.properties.currency, data: data1 };
        vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
      }
    }
    if (data.before !== void 0) {
      let data2 = data.before;
      if (typeof data2 == "string") {
        if (!pattern7.test(data2)) {
          let err9 = { instancePath: instancePath + "/before", schemaPath: "#/$defs/money/pattern", keyword: "pattern", params: { pattern: "^-?[0-9]+(\\.[0-9]+)?$" }, message: 'must match pattern "^-?[0-9]+(\\.[0-9]+)?$"', schema: "^-?[0-9]+(\\.[0-9]+)?$", parentSchema: schema66, data: data2 };
          vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
        }
      } else {
        let err10 = { instancePath: instancePath + "/before", schemaPath: "#/$defs/money/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema66.type, parentSchema: schema66, data: data2 };
        vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
      }
    }
    if (data.after !== void 0) {
      let data3 = data.after;
      if (typeof data3 == "string") {
        if (!pattern7.test(data3)) {
          let err11 = { instancePath: instancePath + "/after", schemaPath: "#/$defs/money/pattern", keyword: "pattern", params: { pattern: "^-?[0-9]+(\\.[0-9]+)?$" }, message: 'must match pattern "^-?[0-9]+(\\.[0-9]+)?$"', schema: "^-?[0-9]+(\\.[0-9]+)?$", parentSchema: schema66, data: data3 };
          vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
        }
      } else {
        let err12 = { instancePath: instancePath + "/after", schemaPath: "#/$defs/money/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema66.type, parentSchema: schema66, data: data3 };
        vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
      }
    }
    if (data.difference !== void 0) {
      let data4 = data.difference;
      if (typeof data4 != "string" && data4 !== null) {
        let err13 = { instancePath: instancePath + "/difference", schemaPath: "#/properties/difference/type", keyword: "type", params: { type: schema65.properties.difference.type }, message: "must be string,null", schema: schema65.properties.difference.type, parentSchema: schema65.properties.difference, data: data4 };
        vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
      }
    }
    if (data.teams !== void 0) {
      let data5 = data.teams;
      if (Array.isArray(data5)) {
        let len0 = data5.length;
        for (let i0 = 0; i0 < len0; i0++)
          validate49(data5[i0], { instancePath: instancePath + "/teams/" + i0, parentData: data5, parentDataProperty: i0, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate49.errors : vErrors.concat(validate49.errors), errors = vErrors.length);
      } else {
        let err14 = { instancePath: instancePath + "/teams", schemaPath: "#/properties/teams/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema65.properties.teams.type, parentSchema: schema65.properties.teams, data: data5 };
        vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
      }
    }
  } else {
    let err15 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema65.type, parentSchema: schema65, data };
    vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
  }
  return validate48.errors = vErrors, errors === 0;
}
validate48.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema71 = { title: "AuditLimit", type: "object", description: "One spend limit.", additionalProperties: !1, required: ["entry", "subject", "limit", "after"], properties: { entry: { type: "string", description: "The entry of the rule pack." }, subject: { $ref: "#/$defs/subject", description: "Whose cost it limits." }, limit: { $ref: "#/$defs/money", description: "The most that a month may cost." }, after: { $ref: "#/$defs/money", description: "What falls under it." } } };
function validate52(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate52.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.entry === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "entry" }, message: "must have required property 'entry'", schema: schema71.required, parentSchema: schema71, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.subject === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "subject" }, message: "must have required property 'subject'", schema: schema71.required, parentSchema: schema71, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.limit === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "limit" }, message: "must have required property 'limit'", schema: schema71.required, parentSchema: schema71, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.after === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "after" }, message: "must have required property 'after'", schema: schema71.required, parentSchema: schema71, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "entry" || key0 === "subject" || key0 === "limit" || key0 === "after")) {
        let err4 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema71, data };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    if (data.entry !== void 0) {
      let data0 = data.entry;
      if (typeof data0 != "string") {
        let err5 = { instancePath: instancePath + "/entry", schemaPath: "#/properties/entry/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema71.properties.entry.type, parentSchema: schema71.properties.entry, data: data0 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
    }
    if (data.subject !== void 0) {
      let data1 = data.subject;
      if (data1 && typeof data1 == "object" && !Array.isArray(data1)) {
        if (data1.kind === void 0) {
          let err6 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'", schema: schema47.required, parentSchema: schema47, data: data1 };
          vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
        }
        if (data1.name === void 0) {
          let err7 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema47.required, parentSchema: schema47, data: data1 };
          vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
        }
        for (let key1 in data1)
          if (!(key1 === "kind" || key1 === "name")) {
            let err8 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema47, data: data1 };
            vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
          }
        if (data1.kind !== void 0) {
          let data2 = data1.kind;
          if (!(data2 === "estate" || data2 === "site" || data2 === "team" || data2 === "label" || data2 === "scope" || data2 === "server" || data2 === "volume" || data2 === "volume-group" || data2 === "file-system" || data2 === "branch")) {
            let err9 = { instancePath: instancePath + "/subject/kind", schemaPath: "#/$defs/subject/properties/kind/enum", keyword: "enum", params: { allowedValues: schema47.properties.kind.enum }, message: "must be equal to one of the allowed values", schema: schema47.properties.kind.enum, parentSchema: schema47.properties.kind, data: data2 };
            vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
          }
        }
        if (data1.name !== void 0) {
          let data3 = data1.name;
          if (typeof data3 != "string") {
            let err10 = { instancePath: instancePath + "/subject/name", schemaPath: "#/$defs/subject/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema47.properties.name.type, parentSchema: schema47.properties.name, data: data3 };
            vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
          }
        }
      } else {
        let err11 = { instancePath: instancePath + "/subject", schemaPath: "#/$defs/subject/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema47.type, parentSchema: schema47, data: data1 };
        vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
      }
    }
    if (data.limit !== void 0) {
      let data4 = data.limit;
      if (typeof data4 == "string") {
        if (!pattern7.test(data4)) {
          let err12 = { instancePath: instancePath + "/limit", schemaPath: "#/$defs/money/pattern", keyword: "pattern", params: { pattern: "^-?[0-9]+(\\.[0-9]+)?$" }, message: 'must match pattern "^-?[0-9]+(\\.[0-9]+)?$"', schema: "^-?[0-9]+(\\.[0-9]+)?$", parentSchema: schema66, data: data4 };
          vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
        }
      } else {
        let err13 = { instancePath: instancePath + "/limit", schemaPath: "#/$defs/money/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema66.type, parentSchema: schema66, data: data4 };
        vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
      }
    }
    if (data.after !== void 0) {
      let data5 = data.after;
      if (typeof data5 == "string") {
        if (!pattern7.test(data5)) {
          let err14 = { instancePath: instancePath + "/after", schemaPath: "#/$defs/money/pattern", keyword: "pattern", params: { pattern: "^-?[0-9]+(\\.[0-9]+)?$" }, message: 'must match pattern "^-?[0-9]+(\\.[0-9]+)?$"', schema: "^-?[0-9]+(\\.[0-9]+)?$", parentSchema: schema66, data: data5 };
          vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
        }
      } else {
        let err15 = { instancePath: instancePath + "/after", schemaPath: "#/$defs/money/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema66.type, parentSchema: schema66, data: data5 };
        vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
      }
    }
  } else {
    let err16 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema71.type, parentSchema: schema71, data };
    vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
  }
  return validate52.errors = vErrors, errors === 0;
}
validate52.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema76 = { title: "AuditOpinion", type: "object", description: "What another policy would have said.", additionalProperties: !1, required: ["verdict", "reasons"], properties: { verdict: { $ref: "#/$defs/verdict" }, reasons: { type: "array", description: "Why.", items: { type: "string" } } } };
function validate54(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate54.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.verdict === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "verdict" }, message: "must have required property 'verdict'", schema: schema76.required, parentSchema: schema76, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.reasons === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "reasons" }, message: "must have required property 'reasons'", schema: schema76.required, parentSchema: schema76, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "verdict" || key0 === "reasons")) {
        let err2 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema76, data };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    if (data.verdict !== void 0) {
      let data0 = data.verdict;
      if (!(data0 === "pass" || data0 === "fail" || data0 === "not judged")) {
        let err3 = { instancePath: instancePath + "/verdict", schemaPath: "#/$defs/verdict/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values", schema: schema37.enum, parentSchema: schema37, data: data0 };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    }
    if (data.reasons !== void 0) {
      let data1 = data.reasons;
      if (Array.isArray(data1)) {
        let len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data2 = data1[i0];
          if (typeof data2 != "string") {
            let err4 = { instancePath: instancePath + "/reasons/" + i0, schemaPath: "#/properties/reasons/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema76.properties.reasons.items.type, parentSchema: schema76.properties.reasons.items, data: data2 };
            vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
          }
        }
      } else {
        let err5 = { instancePath: instancePath + "/reasons", schemaPath: "#/properties/reasons/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema76.properties.reasons.type, parentSchema: schema76.properties.reasons, data: data1 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
    }
  } else {
    let err6 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema76.type, parentSchema: schema76, data };
    vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
  }
  return validate54.errors = vErrors, errors === 0;
}
validate54.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate20(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate20.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.format === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "format" }, message: "must have required property 'format'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.commit === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "commit" }, message: "must have required property 'commit'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.tree === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "tree" }, message: "must have required property 'tree'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.base === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "base" }, message: "must have required property 'base'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    if (data.parents === void 0) {
      let err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "parents" }, message: "must have required property 'parents'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
    }
    if (data.on === void 0) {
      let err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "on" }, message: "must have required property 'on'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
    }
    if (data.committed === void 0) {
      let err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "committed" }, message: "must have required property 'committed'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
    }
    if (data.authored === void 0) {
      let err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "authored" }, message: "must have required property 'authored'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
    }
    if (data.author === void 0) {
      let err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "author" }, message: "must have required property 'author'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
    }
    if (data.committer === void 0) {
      let err9 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "committer" }, message: "must have required property 'committer'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
    }
    if (data.subject === void 0) {
      let err10 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "subject" }, message: "must have required property 'subject'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
    }
    if (data.trailers === void 0) {
      let err11 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "trailers" }, message: "must have required property 'trailers'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
    }
    if (data.signature === void 0) {
      let err12 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "signature" }, message: "must have required property 'signature'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
    }
    if (data.touched === void 0) {
      let err13 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "touched" }, message: "must have required property 'touched'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
    }
    if (data.verdict === void 0) {
      let err14 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "verdict" }, message: "must have required property 'verdict'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
    }
    if (data.reasons === void 0) {
      let err15 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "reasons" }, message: "must have required property 'reasons'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
    }
    if (data.policyFrom === void 0) {
      let err16 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "policyFrom" }, message: "must have required property 'policyFrom'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
    }
    if (data.unreadMain === void 0) {
      let err17 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "unreadMain" }, message: "must have required property 'unreadMain'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
    }
    if (data.failOn === void 0) {
      let err18 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "failOn" }, message: "must have required property 'failOn'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
    }
    if (data.findings === void 0) {
      let err19 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "findings" }, message: "must have required property 'findings'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
    }
    if (data.open === void 0) {
      let err20 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "open" }, message: "must have required property 'open'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
    }
    if (data.between === void 0) {
      let err21 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "between" }, message: "must have required property 'between'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
    }
    if (data.renamed === void 0) {
      let err22 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "renamed" }, message: "must have required property 'renamed'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
    }
    if (data.waivers === void 0) {
      let err23 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "waivers" }, message: "must have required property 'waivers'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
    }
    if (data.cost === void 0) {
      let err24 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "cost" }, message: "must have required property 'cost'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
    }
    if (data.limits === void 0) {
      let err25 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "limits" }, message: "must have required property 'limits'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
    }
    if (data.policyChanges === void 0) {
      let err26 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "policyChanges" }, message: "must have required property 'policyChanges'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
    }
    if (data.proposed === void 0) {
      let err27 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "proposed" }, message: "must have required property 'proposed'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
    }
    if (data.tried === void 0) {
      let err28 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "tried" }, message: "must have required property 'tried'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
    }
    if (data.problems === void 0) {
      let err29 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "problems" }, message: "must have required property 'problems'", schema: schema31.required, parentSchema: schema31, data };
      vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
    }
    for (let key0 in data)
      if (!func1.call(schema31.properties, key0)) {
        let err30 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema31, data };
        vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
      }
    if (data.format !== void 0) {
      let data0 = data.format;
      if (data0 !== "ullage-audit-record-1") {
        let err31 = { instancePath: instancePath + "/format", schemaPath: "#/properties/format/const", keyword: "const", params: { allowedValue: "ullage-audit-record-1" }, message: "must be equal to constant", schema: "ullage-audit-record-1", parentSchema: schema31.properties.format, data: data0 };
        vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
      }
    }
    if (data.commit !== void 0) {
      let data1 = data.commit;
      if (typeof data1 != "string") {
        let err32 = { instancePath: instancePath + "/commit", schemaPath: "#/properties/commit/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema31.properties.commit.type, parentSchema: schema31.properties.commit, data: data1 };
        vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
      }
    }
    if (data.tree !== void 0) {
      let data2 = data.tree;
      if (typeof data2 != "string") {
        let err33 = { instancePath: instancePath + "/tree", schemaPath: "#/properties/tree/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema31.properties.tree.type, parentSchema: schema31.properties.tree, data: data2 };
        vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
      }
    }
    if (data.base !== void 0) {
      let data3 = data.base;
      if (typeof data3 != "string" && data3 !== null) {
        let err34 = { instancePath: instancePath + "/base", schemaPath: "#/properties/base/type", keyword: "type", params: { type: schema31.properties.base.type }, message: "must be string,null", schema: schema31.properties.base.type, parentSchema: schema31.properties.base, data: data3 };
        vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
      }
    }
    if (data.parents !== void 0) {
      let data4 = data.parents;
      if (!(typeof data4 == "number" && !(data4 % 1) && !isNaN(data4) && isFinite(data4))) {
        let err35 = { instancePath: instancePath + "/parents", schemaPath: "#/properties/parents/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema31.properties.parents.type, parentSchema: schema31.properties.parents, data: data4 };
        vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
      }
      if (typeof data4 == "number" && isFinite(data4) && (data4 < 0 || isNaN(data4))) {
        let err36 = { instancePath: instancePath + "/parents", schemaPath: "#/properties/parents/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema31.properties.parents, data: data4 };
        vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
      }
    }
    if (data.on !== void 0) {
      let data5 = data.on;
      if (typeof data5 == "string") {
        if (!pattern4.test(data5)) {
          let err37 = { instancePath: instancePath + "/on", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data5 };
          vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
        }
      } else {
        let err38 = { instancePath: instancePath + "/on", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data5 };
        vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
      }
    }
    if (data.committed !== void 0) {
      let data6 = data.committed;
      if (typeof data6 != "string") {
        let err39 = { instancePath: instancePath + "/committed", schemaPath: "#/properties/committed/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema31.properties.committed.type, parentSchema: schema31.properties.committed, data: data6 };
        vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
      }
    }
    if (data.authored !== void 0) {
      let data7 = data.authored;
      if (typeof data7 != "string") {
        let err40 = { instancePath: instancePath + "/authored", schemaPath: "#/properties/authored/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema31.properties.authored.type, parentSchema: schema31.properties.authored, data: data7 };
        vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
      }
    }
    if (data.author !== void 0) {
      let data8 = data.author;
      if (data8 && typeof data8 == "object" && !Array.isArray(data8)) {
        if (data8.name === void 0) {
          let err41 = { instancePath: instancePath + "/author", schemaPath: "#/$defs/person/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema34.required, parentSchema: schema34, data: data8 };
          vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
        }
        if (data8.email === void 0) {
          let err42 = { instancePath: instancePath + "/author", schemaPath: "#/$defs/person/required", keyword: "required", params: { missingProperty: "email" }, message: "must have required property 'email'", schema: schema34.required, parentSchema: schema34, data: data8 };
          vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
        }
        for (let key1 in data8)
          if (!(key1 === "name" || key1 === "email")) {
            let err43 = { instancePath: instancePath + "/author", schemaPath: "#/$defs/person/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema34, data: data8 };
            vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
          }
        if (data8.name !== void 0) {
          let data9 = data8.name;
          if (typeof data9 != "string") {
            let err44 = { instancePath: instancePath + "/author/name", schemaPath: "#/$defs/person/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema34.properties.name.type, parentSchema: schema34.properties.name, data: data9 };
            vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
          }
        }
        if (data8.email !== void 0) {
          let data10 = data8.email;
          if (typeof data10 != "string") {
            let err45 = { instancePath: instancePath + "/author/email", schemaPath: "#/$defs/person/properties/email/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema34.properties.email.type, parentSchema: schema34.properties.email, data: data10 };
            vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
          }
        }
      } else {
        let err46 = { instancePath: instancePath + "/author", schemaPath: "#/$defs/person/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema34.type, parentSchema: schema34, data: data8 };
        vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
      }
    }
    if (data.committer !== void 0) {
      let data11 = data.committer;
      if (data11 && typeof data11 == "object" && !Array.isArray(data11)) {
        if (data11.name === void 0) {
          let err47 = { instancePath: instancePath + "/committer", schemaPath: "#/$defs/person/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema34.required, parentSchema: schema34, data: data11 };
          vErrors === null ? vErrors = [err47] : vErrors.push(err47), errors++;
        }
        if (data11.email === void 0) {
          let err48 = { instancePath: instancePath + "/committer", schemaPath: "#/$defs/person/required", keyword: "required", params: { missingProperty: "email" }, message: "must have required property 'email'", schema: schema34.required, parentSchema: schema34, data: data11 };
          vErrors === null ? vErrors = [err48] : vErrors.push(err48), errors++;
        }
        for (let key2 in data11)
          if (!(key2 === "name" || key2 === "email")) {
            let err49 = { instancePath: instancePath + "/committer", schemaPath: "#/$defs/person/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema34, data: data11 };
            vErrors === null ? vErrors = [err49] : vErrors.push(err49), errors++;
          }
        if (data11.name !== void 0) {
          let data12 = data11.name;
          if (typeof data12 != "string") {
            let err50 = { instancePath: instancePath + "/committer/name", schemaPath: "#/$defs/person/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema34.properties.name.type, parentSchema: schema34.properties.name, data: data12 };
            vErrors === null ? vErrors = [err50] : vErrors.push(err50), errors++;
          }
        }
        if (data11.email !== void 0) {
          let data13 = data11.email;
          if (typeof data13 != "string") {
            let err51 = { instancePath: instancePath + "/committer/email", schemaPath: "#/$defs/person/properties/email/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema34.properties.email.type, parentSchema: schema34.properties.email, data: data13 };
            vErrors === null ? vErrors = [err51] : vErrors.push(err51), errors++;
          }
        }
      } else {
        let err52 = { instancePath: instancePath + "/committer", schemaPath: "#/$defs/person/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema34.type, parentSchema: schema34, data: data11 };
        vErrors === null ? vErrors = [err52] : vErrors.push(err52), errors++;
      }
    }
    if (data.subject !== void 0) {
      let data14 = data.subject;
      if (typeof data14 != "string") {
        let err53 = { instancePath: instancePath + "/subject", schemaPath: "#/properties/subject/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema31.properties.subject.type, parentSchema: schema31.properties.subject, data: data14 };
        vErrors === null ? vErrors = [err53] : vErrors.push(err53), errors++;
      }
    }
    if (data.trailers !== void 0) {
      let data15 = data.trailers;
      if (Array.isArray(data15)) {
        let len0 = data15.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data16 = data15[i0];
          if (data16 && typeof data16 == "object" && !Array.isArray(data16)) {
            if (data16.key === void 0) {
              let err54 = { instancePath: instancePath + "/trailers/" + i0, schemaPath: "#/$defs/trailer/required", keyword: "required", params: { missingProperty: "key" }, message: "must have required property 'key'", schema: schema36.required, parentSchema: schema36, data: data16 };
              vErrors === null ? vErrors = [err54] : vErrors.push(err54), errors++;
            }
            if (data16.value === void 0) {
              let err55 = { instancePath: instancePath + "/trailers/" + i0, schemaPath: "#/$defs/trailer/required", keyword: "required", params: { missingProperty: "value" }, message: "must have required property 'value'", schema: schema36.required, parentSchema: schema36, data: data16 };
              vErrors === null ? vErrors = [err55] : vErrors.push(err55), errors++;
            }
            for (let key3 in data16)
              if (!(key3 === "key" || key3 === "value")) {
                let err56 = { instancePath: instancePath + "/trailers/" + i0, schemaPath: "#/$defs/trailer/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema36, data: data16 };
                vErrors === null ? vErrors = [err56] : vErrors.push(err56), errors++;
              }
            if (data16.key !== void 0) {
              let data17 = data16.key;
              if (typeof data17 != "string") {
                let err57 = { instancePath: instancePath + "/trailers/" + i0 + "/key", schemaPath: "#/$defs/trailer/properties/key/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema36.properties.key.type, parentSchema: schema36.properties.key, data: data17 };
                vErrors === null ? vErrors = [err57] : vErrors.push(err57), errors++;
              }
            }
            if (data16.value !== void 0) {
              let data18 = data16.value;
              if (typeof data18 != "string") {
                let err58 = { instancePath: instancePath + "/trailers/" + i0 + "/value", schemaPath: "#/$defs/trailer/properties/value/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema36.properties.value.type, parentSchema: schema36.properties.value, data: data18 };
                vErrors === null ? vErrors = [err58] : vErrors.push(err58), errors++;
              }
            }
          } else {
            let err59 = { instancePath: instancePath + "/trailers/" + i0, schemaPath: "#/$defs/trailer/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema36.type, parentSchema: schema36, data: data16 };
            vErrors === null ? vErrors = [err59] : vErrors.push(err59), errors++;
          }
        }
      } else {
        let err60 = { instancePath: instancePath + "/trailers", schemaPath: "#/properties/trailers/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties.trailers.type, parentSchema: schema31.properties.trailers, data: data15 };
        vErrors === null ? vErrors = [err60] : vErrors.push(err60), errors++;
      }
    }
    if (data.signature !== void 0) {
      let data19 = data.signature;
      if (!(data19 === "present" || data19 === "absent")) {
        let err61 = { instancePath: instancePath + "/signature", schemaPath: "#/properties/signature/enum", keyword: "enum", params: { allowedValues: schema31.properties.signature.enum }, message: "must be equal to one of the allowed values", schema: schema31.properties.signature.enum, parentSchema: schema31.properties.signature, data: data19 };
        vErrors === null ? vErrors = [err61] : vErrors.push(err61), errors++;
      }
    }
    if (data.touched !== void 0) {
      let data20 = data.touched;
      if (Array.isArray(data20)) {
        let len1 = data20.length;
        for (let i1 = 0; i1 < len1; i1++) {
          let data21 = data20[i1];
          if (typeof data21 != "string") {
            let err62 = { instancePath: instancePath + "/touched/" + i1, schemaPath: "#/properties/touched/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema31.properties.touched.items.type, parentSchema: schema31.properties.touched.items, data: data21 };
            vErrors === null ? vErrors = [err62] : vErrors.push(err62), errors++;
          }
          if (!(data21 === "settings" || data21 === "storage" || data21 === "prices" || data21 === "policies" || data21 === "waivers" || data21 === "procedures")) {
            let err63 = { instancePath: instancePath + "/touched/" + i1, schemaPath: "#/properties/touched/items/enum", keyword: "enum", params: { allowedValues: schema31.properties.touched.items.enum }, message: "must be equal to one of the allowed values", schema: schema31.properties.touched.items.enum, parentSchema: schema31.properties.touched.items, data: data21 };
            vErrors === null ? vErrors = [err63] : vErrors.push(err63), errors++;
          }
        }
      } else {
        let err64 = { instancePath: instancePath + "/touched", schemaPath: "#/properties/touched/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties.touched.type, parentSchema: schema31.properties.touched, data: data20 };
        vErrors === null ? vErrors = [err64] : vErrors.push(err64), errors++;
      }
    }
    if (data.verdict !== void 0) {
      let data22 = data.verdict;
      if (!(data22 === "pass" || data22 === "fail" || data22 === "not judged")) {
        let err65 = { instancePath: instancePath + "/verdict", schemaPath: "#/$defs/verdict/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values", schema: schema37.enum, parentSchema: schema37, data: data22 };
        vErrors === null ? vErrors = [err65] : vErrors.push(err65), errors++;
      }
    }
    if (data.reasons !== void 0) {
      let data23 = data.reasons;
      if (Array.isArray(data23)) {
        let len2 = data23.length;
        for (let i2 = 0; i2 < len2; i2++) {
          let data24 = data23[i2];
          if (typeof data24 != "string") {
            let err66 = { instancePath: instancePath + "/reasons/" + i2, schemaPath: "#/properties/reasons/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema31.properties.reasons.items.type, parentSchema: schema31.properties.reasons.items, data: data24 };
            vErrors === null ? vErrors = [err66] : vErrors.push(err66), errors++;
          }
        }
      } else {
        let err67 = { instancePath: instancePath + "/reasons", schemaPath: "#/properties/reasons/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties.reasons.type, parentSchema: schema31.properties.reasons, data: data23 };
        vErrors === null ? vErrors = [err67] : vErrors.push(err67), errors++;
      }
    }
    if (data.policyFrom !== void 0) {
      let data25 = data.policyFrom;
      if (!(data25 === "base" || data25 === "head" || data25 === null)) {
        let err68 = { instancePath: instancePath + "/policyFrom", schemaPath: "#/properties/policyFrom/enum", keyword: "enum", params: { allowedValues: schema31.properties.policyFrom.enum }, message: "must be equal to one of the allowed values", schema: schema31.properties.policyFrom.enum, parentSchema: schema31.properties.policyFrom, data: data25 };
        vErrors === null ? vErrors = [err68] : vErrors.push(err68), errors++;
      }
    }
    if (data.unreadMain !== void 0) {
      let data26 = data.unreadMain, _errs59 = errors, valid15 = !1, passing0 = null, _errs60 = errors;
      validate22(data26, { instancePath: instancePath + "/unreadMain", parentData: data, parentDataProperty: "unreadMain", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate22.errors : vErrors.concat(validate22.errors), errors = vErrors.length);
      var _valid0 = _errs60 === errors;
      _valid0 && (valid15 = !0, passing0 = 0);
      let _errs61 = errors;
      if (data26 !== null) {
        let err69 = { instancePath: instancePath + "/unreadMain", schemaPath: "#/properties/unreadMain/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema31.properties.unreadMain.oneOf[1].type, parentSchema: schema31.properties.unreadMain.oneOf[1], data: data26 };
        vErrors === null ? vErrors = [err69] : vErrors.push(err69), errors++;
      }
      var _valid0 = _errs61 === errors;
      if (_valid0 && valid15 ? (valid15 = !1, passing0 = [passing0, 1]) : _valid0 && (valid15 = !0, passing0 = 1), valid15)
        errors = _errs59, vErrors !== null && (_errs59 ? vErrors.length = _errs59 : vErrors = null);
      else {
        let err70 = { instancePath: instancePath + "/unreadMain", schemaPath: "#/properties/unreadMain/oneOf", keyword: "oneOf", params: { passingSchemas: passing0 }, message: "must match exactly one schema in oneOf", schema: schema31.properties.unreadMain.oneOf, parentSchema: schema31.properties.unreadMain, data: data26 };
        vErrors === null ? vErrors = [err70] : vErrors.push(err70), errors++;
      }
    }
    if (data.failOn !== void 0) {
      let data27 = data.failOn;
      if (!(data27 === "error" || data27 === "warning")) {
        let err71 = { instancePath: instancePath + "/failOn", schemaPath: "#/properties/failOn/enum", keyword: "enum", params: { allowedValues: schema31.properties.failOn.enum }, message: "must be equal to one of the allowed values", schema: schema31.properties.failOn.enum, parentSchema: schema31.properties.failOn, data: data27 };
        vErrors === null ? vErrors = [err71] : vErrors.push(err71), errors++;
      }
    }
    if (data.findings !== void 0) {
      let data28 = data.findings;
      if (Array.isArray(data28)) {
        let len3 = data28.length;
        for (let i3 = 0; i3 < len3; i3++)
          validate26(data28[i3], { instancePath: instancePath + "/findings/" + i3, parentData: data28, parentDataProperty: i3, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors), errors = vErrors.length);
      } else {
        let err72 = { instancePath: instancePath + "/findings", schemaPath: "#/properties/findings/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties.findings.type, parentSchema: schema31.properties.findings, data: data28 };
        vErrors === null ? vErrors = [err72] : vErrors.push(err72), errors++;
      }
    }
    if (data.open !== void 0) {
      let data30 = data.open, _errs68 = errors, valid18 = !1, passing1 = null, _errs69 = errors;
      if (data30 && typeof data30 == "object" && !Array.isArray(data30)) {
        if (data30.error === void 0) {
          let err73 = { instancePath: instancePath + "/open", schemaPath: "#/$defs/counts/required", keyword: "required", params: { missingProperty: "error" }, message: "must have required property 'error'", schema: schema56.required, parentSchema: schema56, data: data30 };
          vErrors === null ? vErrors = [err73] : vErrors.push(err73), errors++;
        }
        if (data30.warning === void 0) {
          let err74 = { instancePath: instancePath + "/open", schemaPath: "#/$defs/counts/required", keyword: "required", params: { missingProperty: "warning" }, message: "must have required property 'warning'", schema: schema56.required, parentSchema: schema56, data: data30 };
          vErrors === null ? vErrors = [err74] : vErrors.push(err74), errors++;
        }
        if (data30.note === void 0) {
          let err75 = { instancePath: instancePath + "/open", schemaPath: "#/$defs/counts/required", keyword: "required", params: { missingProperty: "note" }, message: "must have required property 'note'", schema: schema56.required, parentSchema: schema56, data: data30 };
          vErrors === null ? vErrors = [err75] : vErrors.push(err75), errors++;
        }
        for (let key4 in data30)
          if (!(key4 === "error" || key4 === "warning" || key4 === "note")) {
            let err76 = { instancePath: instancePath + "/open", schemaPath: "#/$defs/counts/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key4 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema56, data: data30 };
            vErrors === null ? vErrors = [err76] : vErrors.push(err76), errors++;
          }
        if (data30.error !== void 0) {
          let data31 = data30.error;
          if (!(typeof data31 == "number" && !(data31 % 1) && !isNaN(data31) && isFinite(data31))) {
            let err77 = { instancePath: instancePath + "/open/error", schemaPath: "#/$defs/counts/properties/error/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema56.properties.error.type, parentSchema: schema56.properties.error, data: data31 };
            vErrors === null ? vErrors = [err77] : vErrors.push(err77), errors++;
          }
          if (typeof data31 == "number" && isFinite(data31) && (data31 < 0 || isNaN(data31))) {
            let err78 = { instancePath: instancePath + "/open/error", schemaPath: "#/$defs/counts/properties/error/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema56.properties.error, data: data31 };
            vErrors === null ? vErrors = [err78] : vErrors.push(err78), errors++;
          }
        }
        if (data30.warning !== void 0) {
          let data32 = data30.warning;
          if (!(typeof data32 == "number" && !(data32 % 1) && !isNaN(data32) && isFinite(data32))) {
            let err79 = { instancePath: instancePath + "/open/warning", schemaPath: "#/$defs/counts/properties/warning/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema56.properties.warning.type, parentSchema: schema56.properties.warning, data: data32 };
            vErrors === null ? vErrors = [err79] : vErrors.push(err79), errors++;
          }
          if (typeof data32 == "number" && isFinite(data32) && (data32 < 0 || isNaN(data32))) {
            let err80 = { instancePath: instancePath + "/open/warning", schemaPath: "#/$defs/counts/properties/warning/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema56.properties.warning, data: data32 };
            vErrors === null ? vErrors = [err80] : vErrors.push(err80), errors++;
          }
        }
        if (data30.note !== void 0) {
          let data33 = data30.note;
          if (!(typeof data33 == "number" && !(data33 % 1) && !isNaN(data33) && isFinite(data33))) {
            let err81 = { instancePath: instancePath + "/open/note", schemaPath: "#/$defs/counts/properties/note/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema56.properties.note.type, parentSchema: schema56.properties.note, data: data33 };
            vErrors === null ? vErrors = [err81] : vErrors.push(err81), errors++;
          }
          if (typeof data33 == "number" && isFinite(data33) && (data33 < 0 || isNaN(data33))) {
            let err82 = { instancePath: instancePath + "/open/note", schemaPath: "#/$defs/counts/properties/note/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema56.properties.note, data: data33 };
            vErrors === null ? vErrors = [err82] : vErrors.push(err82), errors++;
          }
        }
      } else {
        let err83 = { instancePath: instancePath + "/open", schemaPath: "#/$defs/counts/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema56.type, parentSchema: schema56, data: data30 };
        vErrors === null ? vErrors = [err83] : vErrors.push(err83), errors++;
      }
      var _valid1 = _errs69 === errors;
      _valid1 && (valid18 = !0, passing1 = 0);
      let _errs79 = errors;
      if (data30 !== null) {
        let err84 = { instancePath: instancePath + "/open", schemaPath: "#/properties/open/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema31.properties.open.oneOf[1].type, parentSchema: schema31.properties.open.oneOf[1], data: data30 };
        vErrors === null ? vErrors = [err84] : vErrors.push(err84), errors++;
      }
      var _valid1 = _errs79 === errors;
      if (_valid1 && valid18 ? (valid18 = !1, passing1 = [passing1, 1]) : _valid1 && (valid18 = !0, passing1 = 1), valid18)
        errors = _errs68, vErrors !== null && (_errs68 ? vErrors.length = _errs68 : vErrors = null);
      else {
        let err85 = { instancePath: instancePath + "/open", schemaPath: "#/properties/open/oneOf", keyword: "oneOf", params: { passingSchemas: passing1 }, message: "must match exactly one schema in oneOf", schema: schema31.properties.open.oneOf, parentSchema: schema31.properties.open, data: data30 };
        vErrors === null ? vErrors = [err85] : vErrors.push(err85), errors++;
      }
    }
    if (data.between !== void 0) {
      let data34 = data.between, _errs82 = errors, valid21 = !1, passing2 = null, _errs83 = errors;
      validate35(data34, { instancePath: instancePath + "/between", parentData: data, parentDataProperty: "between", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate35.errors : vErrors.concat(validate35.errors), errors = vErrors.length);
      var _valid2 = _errs83 === errors;
      _valid2 && (valid21 = !0, passing2 = 0);
      let _errs84 = errors;
      if (data34 !== null) {
        let err86 = { instancePath: instancePath + "/between", schemaPath: "#/properties/between/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema31.properties.between.oneOf[1].type, parentSchema: schema31.properties.between.oneOf[1], data: data34 };
        vErrors === null ? vErrors = [err86] : vErrors.push(err86), errors++;
      }
      var _valid2 = _errs84 === errors;
      if (_valid2 && valid21 ? (valid21 = !1, passing2 = [passing2, 1]) : _valid2 && (valid21 = !0, passing2 = 1), valid21)
        errors = _errs82, vErrors !== null && (_errs82 ? vErrors.length = _errs82 : vErrors = null);
      else {
        let err87 = { instancePath: instancePath + "/between", schemaPath: "#/properties/between/oneOf", keyword: "oneOf", params: { passingSchemas: passing2 }, message: "must match exactly one schema in oneOf", schema: schema31.properties.between.oneOf, parentSchema: schema31.properties.between, data: data34 };
        vErrors === null ? vErrors = [err87] : vErrors.push(err87), errors++;
      }
    }
    if (data.renamed !== void 0) {
      let data35 = data.renamed;
      if (Array.isArray(data35)) {
        let len4 = data35.length;
        for (let i4 = 0; i4 < len4; i4++)
          validate40(data35[i4], { instancePath: instancePath + "/renamed/" + i4, parentData: data35, parentDataProperty: i4, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate40.errors : vErrors.concat(validate40.errors), errors = vErrors.length);
      } else {
        let err88 = { instancePath: instancePath + "/renamed", schemaPath: "#/properties/renamed/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties.renamed.type, parentSchema: schema31.properties.renamed, data: data35 };
        vErrors === null ? vErrors = [err88] : vErrors.push(err88), errors++;
      }
    }
    if (data.waivers !== void 0) {
      let data37 = data.waivers;
      if (Array.isArray(data37)) {
        let len5 = data37.length;
        for (let i5 = 0; i5 < len5; i5++)
          validate45(data37[i5], { instancePath: instancePath + "/waivers/" + i5, parentData: data37, parentDataProperty: i5, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate45.errors : vErrors.concat(validate45.errors), errors = vErrors.length);
      } else {
        let err89 = { instancePath: instancePath + "/waivers", schemaPath: "#/properties/waivers/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties.waivers.type, parentSchema: schema31.properties.waivers, data: data37 };
        vErrors === null ? vErrors = [err89] : vErrors.push(err89), errors++;
      }
    }
    if (data.cost !== void 0) {
      let data39 = data.cost, _errs93 = errors, valid26 = !1, passing3 = null, _errs94 = errors;
      validate48(data39, { instancePath: instancePath + "/cost", parentData: data, parentDataProperty: "cost", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate48.errors : vErrors.concat(validate48.errors), errors = vErrors.length);
      var _valid3 = _errs94 === errors;
      _valid3 && (valid26 = !0, passing3 = 0);
      let _errs95 = errors;
      if (data39 !== null) {
        let err90 = { instancePath: instancePath + "/cost", schemaPath: "#/properties/cost/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema31.properties.cost.oneOf[1].type, parentSchema: schema31.properties.cost.oneOf[1], data: data39 };
        vErrors === null ? vErrors = [err90] : vErrors.push(err90), errors++;
      }
      var _valid3 = _errs95 === errors;
      if (_valid3 && valid26 ? (valid26 = !1, passing3 = [passing3, 1]) : _valid3 && (valid26 = !0, passing3 = 1), valid26)
        errors = _errs93, vErrors !== null && (_errs93 ? vErrors.length = _errs93 : vErrors = null);
      else {
        let err91 = { instancePath: instancePath + "/cost", schemaPath: "#/properties/cost/oneOf", keyword: "oneOf", params: { passingSchemas: passing3 }, message: "must match exactly one schema in oneOf", schema: schema31.properties.cost.oneOf, parentSchema: schema31.properties.cost, data: data39 };
        vErrors === null ? vErrors = [err91] : vErrors.push(err91), errors++;
      }
    }
    if (data.limits !== void 0) {
      let data40 = data.limits;
      if (Array.isArray(data40)) {
        let len6 = data40.length;
        for (let i6 = 0; i6 < len6; i6++)
          validate52(data40[i6], { instancePath: instancePath + "/limits/" + i6, parentData: data40, parentDataProperty: i6, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate52.errors : vErrors.concat(validate52.errors), errors = vErrors.length);
      } else {
        let err92 = { instancePath: instancePath + "/limits", schemaPath: "#/properties/limits/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties.limits.type, parentSchema: schema31.properties.limits, data: data40 };
        vErrors === null ? vErrors = [err92] : vErrors.push(err92), errors++;
      }
    }
    if (data.policyChanges !== void 0) {
      let data42 = data.policyChanges;
      if (Array.isArray(data42)) {
        let len7 = data42.length;
        for (let i7 = 0; i7 < len7; i7++) {
          let data43 = data42[i7];
          if (data43 && typeof data43 == "object" && !Array.isArray(data43)) {
            if (data43.direction === void 0) {
              let err93 = { instancePath: instancePath + "/policyChanges/" + i7, schemaPath: "#/$defs/policyChange/required", keyword: "required", params: { missingProperty: "direction" }, message: "must have required property 'direction'", schema: schema75.required, parentSchema: schema75, data: data43 };
              vErrors === null ? vErrors = [err93] : vErrors.push(err93), errors++;
            }
            if (data43.of === void 0) {
              let err94 = { instancePath: instancePath + "/policyChanges/" + i7, schemaPath: "#/$defs/policyChange/required", keyword: "required", params: { missingProperty: "of" }, message: "must have required property 'of'", schema: schema75.required, parentSchema: schema75, data: data43 };
              vErrors === null ? vErrors = [err94] : vErrors.push(err94), errors++;
            }
            if (data43.name === void 0) {
              let err95 = { instancePath: instancePath + "/policyChanges/" + i7, schemaPath: "#/$defs/policyChange/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema75.required, parentSchema: schema75, data: data43 };
              vErrors === null ? vErrors = [err95] : vErrors.push(err95), errors++;
            }
            if (data43.key === void 0) {
              let err96 = { instancePath: instancePath + "/policyChanges/" + i7, schemaPath: "#/$defs/policyChange/required", keyword: "required", params: { missingProperty: "key" }, message: "must have required property 'key'", schema: schema75.required, parentSchema: schema75, data: data43 };
              vErrors === null ? vErrors = [err96] : vErrors.push(err96), errors++;
            }
            if (data43.from === void 0) {
              let err97 = { instancePath: instancePath + "/policyChanges/" + i7, schemaPath: "#/$defs/policyChange/required", keyword: "required", params: { missingProperty: "from" }, message: "must have required property 'from'", schema: schema75.required, parentSchema: schema75, data: data43 };
              vErrors === null ? vErrors = [err97] : vErrors.push(err97), errors++;
            }
            if (data43.to === void 0) {
              let err98 = { instancePath: instancePath + "/policyChanges/" + i7, schemaPath: "#/$defs/policyChange/required", keyword: "required", params: { missingProperty: "to" }, message: "must have required property 'to'", schema: schema75.required, parentSchema: schema75, data: data43 };
              vErrors === null ? vErrors = [err98] : vErrors.push(err98), errors++;
            }
            if (data43.monthly === void 0) {
              let err99 = { instancePath: instancePath + "/policyChanges/" + i7, schemaPath: "#/$defs/policyChange/required", keyword: "required", params: { missingProperty: "monthly" }, message: "must have required property 'monthly'", schema: schema75.required, parentSchema: schema75, data: data43 };
              vErrors === null ? vErrors = [err99] : vErrors.push(err99), errors++;
            }
            for (let key5 in data43)
              if (!(key5 === "direction" || key5 === "monthly" || key5 === "of" || key5 === "name" || key5 === "key" || key5 === "from" || key5 === "to")) {
                let err100 = { instancePath: instancePath + "/policyChanges/" + i7, schemaPath: "#/$defs/policyChange/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key5 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema75, data: data43 };
                vErrors === null ? vErrors = [err100] : vErrors.push(err100), errors++;
              }
            if (data43.direction !== void 0) {
              let data44 = data43.direction;
              if (!(data44 === "tighter" || data44 === "looser" || data44 === "neither" || data44 === "unknown")) {
                let err101 = { instancePath: instancePath + "/policyChanges/" + i7 + "/direction", schemaPath: "#/$defs/policyChange/properties/direction/enum", keyword: "enum", params: { allowedValues: schema75.properties.direction.enum }, message: "must be equal to one of the allowed values", schema: schema75.properties.direction.enum, parentSchema: schema75.properties.direction, data: data44 };
                vErrors === null ? vErrors = [err101] : vErrors.push(err101), errors++;
              }
            }
            if (data43.monthly !== void 0) {
              let data45 = data43.monthly, _errs108 = errors, valid33 = !1, passing4 = null, _errs109 = errors;
              if (data45 && typeof data45 == "object" && !Array.isArray(data45)) {
                if (data45.currency === void 0) {
                  let err102 = { instancePath: instancePath + "/policyChanges/" + i7 + "/monthly", schemaPath: "#/$defs/policyChange/properties/monthly/oneOf/0/required", keyword: "required", params: { missingProperty: "currency" }, message: "must have required property 'currency'", schema: schema75.properties.monthly.oneOf[0].required, parentSchema: schema75.properties.monthly.oneOf[0], data: data45 };
                  vErrors === null ? vErrors = [err102] : vErrors.push(err102), errors++;
                }
                if (data45.difference === void 0) {
                  let err103 = { instancePath: instancePath + "/policyChanges/" + i7 + "/monthly", schemaPath: "#/$defs/policyChange/properties/monthly/oneOf/0/required", keyword: "required", params: { missingProperty: "difference" }, message: "must have required property 'difference'", schema: schema75.properties.monthly.oneOf[0].required, parentSchema: schema75.properties.monthly.oneOf[0], data: data45 };
                  vErrors === null ? vErrors = [err103] : vErrors.push(err103), errors++;
                }
                for (let key6 in data45)
                  if (!(key6 === "currency" || key6 === "difference")) {
                    let err104 = { instancePath: instancePath + "/policyChanges/" + i7 + "/monthly", schemaPath: "#/$defs/policyChange/properties/monthly/oneOf/0/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key6 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema75.properties.monthly.oneOf[0], data: data45 };
                    vErrors === null ? vErrors = [err104] : vErrors.push(err104), errors++;
                  }
                if (data45.currency !== void 0) {
                  let data46 = data45.currency;
                  if (typeof data46 != "string") {
                    let err105 = { instancePath: instancePath + "/policyChanges/" + i7 + "/monthly/currency", schemaPath: "#/$defs/policyChange/properties/monthly/oneOf/0/properties/currency/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema75.properties.monthly.oneOf[0].properties.currency.type, parentSchema: schema75.properties.monthly.oneOf[0].properties.currency, data: data46 };
                    vErrors === null ? vErrors = [err105] : vErrors.push(err105), errors++;
                  }
                }
                if (data45.difference !== void 0) {
                  let data47 = data45.difference;
                  if (typeof data47 != "string") {
                    let err106 = { instancePath: instancePath + "/policyChanges/" + i7 + "/monthly/difference", schemaPath: "#/$defs/policyChange/properties/monthly/oneOf/0/properties/difference/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema75.properties.monthly.oneOf[0].properties.difference.type, parentSchema: schema75.properties.monthly.oneOf[0].properties.difference, data: data47 };
                    vErrors === null ? vErrors = [err106] : vErrors.push(err106), errors++;
                  }
                }
              } else {
                let err107 = { instancePath: instancePath + "/policyChanges/" + i7 + "/monthly", schemaPath: "#/$defs/policyChange/properties/monthly/oneOf/0/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema75.properties.monthly.oneOf[0].type, parentSchema: schema75.properties.monthly.oneOf[0], data: data45 };
                vErrors === null ? vErrors = [err107] : vErrors.push(err107), errors++;
              }
              var _valid4 = _errs109 === errors;
              _valid4 && (valid33 = !0, passing4 = 0);
              let _errs116 = errors;
              if (data45 !== null) {
                let err108 = { instancePath: instancePath + "/policyChanges/" + i7 + "/monthly", schemaPath: "#/$defs/policyChange/properties/monthly/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema75.properties.monthly.oneOf[1].type, parentSchema: schema75.properties.monthly.oneOf[1], data: data45 };
                vErrors === null ? vErrors = [err108] : vErrors.push(err108), errors++;
              }
              var _valid4 = _errs116 === errors;
              if (_valid4 && valid33 ? (valid33 = !1, passing4 = [passing4, 1]) : _valid4 && (valid33 = !0, passing4 = 1), valid33)
                errors = _errs108, vErrors !== null && (_errs108 ? vErrors.length = _errs108 : vErrors = null);
              else {
                let err109 = { instancePath: instancePath + "/policyChanges/" + i7 + "/monthly", schemaPath: "#/$defs/policyChange/properties/monthly/oneOf", keyword: "oneOf", params: { passingSchemas: passing4 }, message: "must match exactly one schema in oneOf", schema: schema75.properties.monthly.oneOf, parentSchema: schema75.properties.monthly, data: data45 };
                vErrors === null ? vErrors = [err109] : vErrors.push(err109), errors++;
              }
            }
            if (data43.of !== void 0) {
              let data48 = data43.of;
              if (!(data48 === "rule" || data48 === "waiver" || data48 === "price-list" || data48 === "settings" || data48 === "readings" || data48 === "surveys" || data48 === "server" || data48 === "procedures")) {
                let err110 = { instancePath: instancePath + "/policyChanges/" + i7 + "/of", schemaPath: "#/$defs/policyChange/properties/of/enum", keyword: "enum", params: { allowedValues: schema75.properties.of.enum }, message: "must be equal to one of the allowed values", schema: schema75.properties.of.enum, parentSchema: schema75.properties.of, data: data48 };
                vErrors === null ? vErrors = [err110] : vErrors.push(err110), errors++;
              }
            }
            if (data43.name !== void 0) {
              let data49 = data43.name;
              if (typeof data49 != "string") {
                let err111 = { instancePath: instancePath + "/policyChanges/" + i7 + "/name", schemaPath: "#/$defs/policyChange/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema75.properties.name.type, parentSchema: schema75.properties.name, data: data49 };
                vErrors === null ? vErrors = [err111] : vErrors.push(err111), errors++;
              }
            }
            if (data43.key !== void 0) {
              let data50 = data43.key;
              if (typeof data50 != "string" && data50 !== null) {
                let err112 = { instancePath: instancePath + "/policyChanges/" + i7 + "/key", schemaPath: "#/$defs/policyChange/properties/key/type", keyword: "type", params: { type: schema75.properties.key.type }, message: "must be string,null", schema: schema75.properties.key.type, parentSchema: schema75.properties.key, data: data50 };
                vErrors === null ? vErrors = [err112] : vErrors.push(err112), errors++;
              }
            }
            if (data43.from !== void 0) {
              let data51 = data43.from;
              if (typeof data51 != "string" && data51 !== null) {
                let err113 = { instancePath: instancePath + "/policyChanges/" + i7 + "/from", schemaPath: "#/$defs/policyChange/properties/from/type", keyword: "type", params: { type: schema75.properties.from.type }, message: "must be string,null", schema: schema75.properties.from.type, parentSchema: schema75.properties.from, data: data51 };
                vErrors === null ? vErrors = [err113] : vErrors.push(err113), errors++;
              }
            }
            if (data43.to !== void 0) {
              let data52 = data43.to;
              if (typeof data52 != "string" && data52 !== null) {
                let err114 = { instancePath: instancePath + "/policyChanges/" + i7 + "/to", schemaPath: "#/$defs/policyChange/properties/to/type", keyword: "type", params: { type: schema75.properties.to.type }, message: "must be string,null", schema: schema75.properties.to.type, parentSchema: schema75.properties.to, data: data52 };
                vErrors === null ? vErrors = [err114] : vErrors.push(err114), errors++;
              }
            }
          } else {
            let err115 = { instancePath: instancePath + "/policyChanges/" + i7, schemaPath: "#/$defs/policyChange/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema75.type, parentSchema: schema75, data: data43 };
            vErrors === null ? vErrors = [err115] : vErrors.push(err115), errors++;
          }
        }
      } else {
        let err116 = { instancePath: instancePath + "/policyChanges", schemaPath: "#/properties/policyChanges/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties.policyChanges.type, parentSchema: schema31.properties.policyChanges, data: data42 };
        vErrors === null ? vErrors = [err116] : vErrors.push(err116), errors++;
      }
    }
    if (data.proposed !== void 0) {
      let data53 = data.proposed, _errs128 = errors, valid35 = !1, passing5 = null, _errs129 = errors;
      validate54(data53, { instancePath: instancePath + "/proposed", parentData: data, parentDataProperty: "proposed", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors), errors = vErrors.length);
      var _valid5 = _errs129 === errors;
      _valid5 && (valid35 = !0, passing5 = 0);
      let _errs130 = errors;
      if (data53 !== null) {
        let err117 = { instancePath: instancePath + "/proposed", schemaPath: "#/properties/proposed/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema31.properties.proposed.oneOf[1].type, parentSchema: schema31.properties.proposed.oneOf[1], data: data53 };
        vErrors === null ? vErrors = [err117] : vErrors.push(err117), errors++;
      }
      var _valid5 = _errs130 === errors;
      if (_valid5 && valid35 ? (valid35 = !1, passing5 = [passing5, 1]) : _valid5 && (valid35 = !0, passing5 = 1), valid35)
        errors = _errs128, vErrors !== null && (_errs128 ? vErrors.length = _errs128 : vErrors = null);
      else {
        let err118 = { instancePath: instancePath + "/proposed", schemaPath: "#/properties/proposed/oneOf", keyword: "oneOf", params: { passingSchemas: passing5 }, message: "must match exactly one schema in oneOf", schema: schema31.properties.proposed.oneOf, parentSchema: schema31.properties.proposed, data: data53 };
        vErrors === null ? vErrors = [err118] : vErrors.push(err118), errors++;
      }
    }
    if (data.tried !== void 0) {
      let data54 = data.tried, _errs133 = errors, valid36 = !1, passing6 = null, _errs134 = errors;
      validate54(data54, { instancePath: instancePath + "/tried", parentData: data, parentDataProperty: "tried", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors), errors = vErrors.length);
      var _valid6 = _errs134 === errors;
      _valid6 && (valid36 = !0, passing6 = 0);
      let _errs135 = errors;
      if (data54 !== null) {
        let err119 = { instancePath: instancePath + "/tried", schemaPath: "#/properties/tried/oneOf/1/type", keyword: "type", params: { type: "null" }, message: "must be null", schema: schema31.properties.tried.oneOf[1].type, parentSchema: schema31.properties.tried.oneOf[1], data: data54 };
        vErrors === null ? vErrors = [err119] : vErrors.push(err119), errors++;
      }
      var _valid6 = _errs135 === errors;
      if (_valid6 && valid36 ? (valid36 = !1, passing6 = [passing6, 1]) : _valid6 && (valid36 = !0, passing6 = 1), valid36)
        errors = _errs133, vErrors !== null && (_errs133 ? vErrors.length = _errs133 : vErrors = null);
      else {
        let err120 = { instancePath: instancePath + "/tried", schemaPath: "#/properties/tried/oneOf", keyword: "oneOf", params: { passingSchemas: passing6 }, message: "must match exactly one schema in oneOf", schema: schema31.properties.tried.oneOf, parentSchema: schema31.properties.tried, data: data54 };
        vErrors === null ? vErrors = [err120] : vErrors.push(err120), errors++;
      }
    }
    if (data.problems !== void 0) {
      let data55 = data.problems;
      if (Array.isArray(data55)) {
        let len8 = data55.length;
        for (let i8 = 0; i8 < len8; i8++)
          validate23(data55[i8], { instancePath: instancePath + "/problems/" + i8, parentData: data55, parentDataProperty: i8, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors), errors = vErrors.length);
      } else {
        let err121 = { instancePath: instancePath + "/problems", schemaPath: "#/properties/problems/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties.problems.type, parentSchema: schema31.properties.problems, data: data55 };
        vErrors === null ? vErrors = [err121] : vErrors.push(err121), errors++;
      }
    }
  } else {
    let err122 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.type, parentSchema: schema31, data };
    vErrors === null ? vErrors = [err122] : vErrors.push(err122), errors++;
  }
  return validate20.errors = vErrors, errors === 0;
}
validate20.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var estate = validate58, schema78 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "estate.json", title: "EstateFile", description: "An estate file: servers, volumes, attachments, volume groups, file systems, retired volumes.", type: "object", additionalProperties: !1, properties: { team: { $ref: "common.json#/$defs/name", description: "The team that everything in this file belongs to, unless it names its own.", examples: ["imagery"] }, site: { $ref: "common.json#/$defs/name", description: "The site that everything in this file is at, unless it names its own.", examples: ["north-quay"] }, labels: { $ref: "common.json#/$defs/labels", description: "Labels that everything in this file carries, unless it sets the same label itself." }, existing: { type: "boolean", description: "true means that everything that comes with this line and says nothing of its own is already there and is only being declared: nothing is created, attached or formatted. Once main has the line, it says nothing of what is added to the file later." }, servers: { type: "object", propertyNames: { $ref: "common.json#/$defs/name", examples: ["plate-scanner"] }, description: "The servers, by name.", additionalProperties: { title: "ServerDeclaration", type: "object", additionalProperties: !1, description: "One server.", examples: [{ power: "running", boot: "plate-scanner-root" }], properties: { id: { $ref: "common.json#/$defs/providerId", description: "The provider's own identifier of the server, by which surveys and bills know it; no two servers have the same. In quotes where it looks like a number." }, power: { type: "string", enum: ["running", "stopped"], default: "running", description: "Whether the server runs. A stopped server may still be billed." }, boot: { $ref: "common.json#/$defs/name", description: "The volume the server starts from. It counts as attached.", examples: ["plate-scanner-root"] }, guest: { type: "string", pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", description: "What runs inside the server, which decides the steps in the guest: linux-lvm, linux, windows, other, or one of your own procedures.", examples: ["linux-lvm"] }, type: { $ref: "common.json#/$defs/name", description: "The server type in the price list that this server is billed as.", examples: ["small"] }, iops: { type: "integer", minimum: 0, description: "The IOPS (input and output operations a second) that this server needs from all its volumes together." }, "attachment-slots": { type: "integer", minimum: 0, description: "How many volumes can be attached to this server, if other than at its site in general." }, team: { $ref: "common.json#/$defs/name", description: "The team that is responsible for the server and its cost.", examples: ["imagery"] }, site: { $ref: "common.json#/$defs/name", description: "The site the server is at.", examples: ["north-quay"] }, labels: { $ref: "common.json#/$defs/labels" }, existing: { type: "boolean", description: "true means that the server and the volume it starts from are already there and are only being declared: nothing is created or attached. Only while the server is new to main." }, formerly: { $ref: "common.json#/$defs/name", description: "The server's name before this change, so that a rename is not taken for a deletion." } } } }, volumes: { type: "object", propertyNames: { $ref: "common.json#/$defs/name" }, description: "The volumes, by name.", additionalProperties: { title: "VolumeDeclaration", type: "object", additionalProperties: !1, required: ["size", "tier"], description: "One volume.", properties: { id: { $ref: "common.json#/$defs/providerId", description: "The provider's own identifier of the volume, by which surveys and bills know it; no two volumes have the same. In quotes where it looks like a number." }, size: { $ref: "common.json#/$defs/size", description: "The provisioned size: a number with its unit, such as 50 GiB." }, tier: { $ref: "common.json#/$defs/name", description: "The tier in the price list.", examples: ["bulk"] }, shareable: { type: "boolean", default: !1, description: "Whether the provider allows it to be attached to several servers at once." }, protected: { type: "boolean", default: !1, description: "A protected volume cannot be deleted before its protection is removed in a change of its own." }, owner: { $ref: "common.json#/$defs/sentence", description: "The person or role that is responsible for an unattached volume; the team if none is named.", examples: ["head of imagery"] }, reason: { $ref: "common.json#/$defs/sentence", description: "Why an unattached volume is kept.", examples: ["the master copy travels between servers"] }, "retain-until": { $ref: "common.json#/$defs/date", description: "The day until which an unattached volume is kept." }, "file-system": { $ref: "#/$defs/wholeVolumeFileSystem" }, team: { $ref: "common.json#/$defs/name", description: "The team that is responsible for the volume and its cost.", examples: ["imagery"] }, site: { $ref: "common.json#/$defs/name", description: "The site the volume is at.", examples: ["north-quay"] }, labels: { $ref: "common.json#/$defs/labels" }, existing: { type: "boolean", description: "true means that the volume, what is on it and its attachments are already there and are only being declared: nothing is created, attached or formatted. Only while the volume is new to main." }, formerly: { $ref: "common.json#/$defs/name", description: "The volume's name before this change, so that a rename is not taken for a deletion." } } } }, attachments: { type: "array", description: "Which volume is attached to which server. A boot volume needs no entry.", items: { title: "AttachmentDeclaration", type: "object", additionalProperties: !1, required: ["volume", "server"], description: "One volume on one server.", properties: { volume: { $ref: "common.json#/$defs/name", description: "The volume." }, server: { $ref: "common.json#/$defs/name", description: "The server it is attached to.", examples: ["plate-scanner"] }, existing: { type: "boolean", description: "true means that it is attached already and that is only being declared. If left out, so is a volume that is itself only being declared." } } } }, "volume-groups": { type: "object", propertyNames: { $ref: "common.json#/$defs/name", examples: ["plates"] }, description: "The volume groups, by name.", additionalProperties: { title: "VolumeGroupDeclaration", type: "object", additionalProperties: !1, required: ["members"], description: "Volumes that are used as one. All of them are moved together.", properties: { extent: { $ref: "common.json#/$defs/size", default: "4 MiB", description: "The size of the group's extents, in which it allocates capacity.", examples: ["64 MiB"] }, members: { type: "array", minItems: 1, items: { $ref: "common.json#/$defs/name" }, description: "The volumes in the group." }, layout: { type: "string", enum: ["linear", "striped", "mirrored"], default: "linear", description: "How the group's file systems are laid out on its members." }, stripes: { type: "integer", minimum: 2, description: "Over how many members a striped layout spreads; all of them if left out." }, copies: { type: "integer", minimum: 2, default: 2, description: "How many whole copies a mirrored layout keeps." }, "file-systems": { type: "object", description: "The file systems in the group, by mount point.", propertyNames: { $ref: "#/$defs/mountPoint" }, additionalProperties: { title: "FileSystemDeclaration", type: "object", additionalProperties: !1, required: ["size", "type"], description: "One file system on its own logical volume.", properties: { size: { $ref: "common.json#/$defs/size", description: "The size of its logical volume." }, type: { $ref: "#/$defs/fileSystemType" }, existing: { type: "boolean", description: "true means that it is already there and is only being declared: nothing is created, and nothing is overwritten. If left out, that of its group; only while the file system is new to main." }, reserve: { type: "number", minimum: 0, maximum: 0.5, default: 0.05, description: "ext2, ext3 and ext4: the share of it that only the superuser may fill, such as 0.01. mke2fs 1.47.0 keeps 0.05." }, "block-size": { $ref: "common.json#/$defs/size", description: "ext2, ext3, ext4 and xfs: its block size. mke2fs 1.47.0 uses 1 KiB below 512 MiB, and 4 KiB above; mkfs.xfs 6.1.0 uses 4 KiB." }, "inode-ratio": { $ref: "common.json#/$defs/size", description: "ext2, ext3 and ext4: how much of the device there is for each inode. mke2fs 1.47.0 uses 4 KiB below 512 MiB, 32 KiB from 4 TiB, and 16 KiB between." }, "reverse-map": { type: "boolean", default: !1, description: "xfs: whether it keeps a map from each block to what owns it, which takes more than a hundredth of its capacity. mkfs.xfs 6.1.0 does not unless told to; later versions may." } } } }, team: { $ref: "common.json#/$defs/name", description: "The team that is responsible for the group.", examples: ["imagery"] }, labels: { $ref: "common.json#/$defs/labels" }, formerly: { $ref: "common.json#/$defs/name", description: "The group's name before this change, so that a rename is not taken for a deletion." }, existing: { type: "boolean", description: "true means that the group, its members and its file systems are already there and are only being declared: nothing is created, and nothing is overwritten. Only while the group is new to main." } } } }, retired: { type: "array", description: "Volumes and file systems that were deleted, each with its reason and its backup.", items: { title: "RetiredDeclaration", type: "object", additionalProperties: !1, required: ["on", "reason"], description: "One deletion, put on record.", properties: { volume: { $ref: "common.json#/$defs/name", description: "The volume that was deleted." }, "file-system": { $ref: "common.json#/$defs/sentence", description: "The file system that was deleted while its volumes stay: what it was on and its mount point, as in plates:/plates.", examples: ["plates:/plates"] }, on: { $ref: "common.json#/$defs/date", description: "The day of the deletion." }, reason: { $ref: "common.json#/$defs/sentence", description: "Why it is no longer needed." }, backup: { $ref: "common.json#/$defs/sentence", description: "Where the last backup is.", examples: ["vault/plates-1/2026-11-19"] }, "backed-up": { $ref: "common.json#/$defs/date", description: "The day of that backup." } }, oneOf: [{ required: ["volume"] }, { required: ["file-system"] }] } } }, $defs: { mountPoint: { title: "MountPoint", type: "string", pattern: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$", description: "Where the guest mounts it: an absolute path, a drive letter such as D:, or swap.", examples: ["/plates"] }, fileSystemType: { title: "FileSystemType", type: "string", enum: ["ext2", "ext3", "ext4", "xfs", "btrfs", "zfs", "ntfs", "vfat", "gfs2", "ocfs2", "swap"], examples: ["ext4"], description: "The file system's type, which decides whether it can shrink and whether two servers may mount it." }, wholeVolumeFileSystem: { title: "WholeVolumeFileSystemDeclaration", type: "object", additionalProperties: !1, required: ["mount", "type"], description: "The file system on this volume itself, outside any group.", properties: { mount: { $ref: "#/$defs/mountPoint" }, type: { $ref: "#/$defs/fileSystemType" }, size: { $ref: "common.json#/$defs/size", description: "The size it was created with or grown to; the whole volume if left out." }, existing: { type: "boolean", description: "true means that it is already there and is only being declared: nothing is created, and nothing is overwritten. If left out, that of its volume; only while the file system is new to main." }, reserve: { type: "number", minimum: 0, maximum: 0.5, default: 0.05, description: "ext2, ext3 and ext4: the share of it that only the superuser may fill, such as 0.01. mke2fs 1.47.0 keeps 0.05." }, "block-size": { $ref: "common.json#/$defs/size", description: "ext2, ext3, ext4 and xfs: its block size. mke2fs 1.47.0 uses 1 KiB below 512 MiB, and 4 KiB above; mkfs.xfs 6.1.0 uses 4 KiB." }, "inode-ratio": { $ref: "common.json#/$defs/size", description: "ext2, ext3 and ext4: how much of the device there is for each inode. mke2fs 1.47.0 uses 4 KiB below 512 MiB, 32 KiB from 4 TiB, and 16 KiB between." }, "reverse-map": { type: "boolean", default: !1, description: "xfs: whether it keeps a map from each block to what owns it, which takes more than a hundredth of its capacity. mkfs.xfs 6.1.0 does not unless told to; later versions may." } } } } }, schema79 = { title: "Name", type: "string", pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", description: "A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.", examples: ["plates-1"] }, schema84 = { title: "Identifier", type: "string", pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]{1,255}$", description: "The provider's own identifier, as its console or its list shows it, without control characters; in quotes where it looks like a number.", examples: ["6f1c2b0e-9d1a-4f0e-8a55-2f6f0c1d7e11"] }, schema92 = { title: "Size", type: "string", pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", description: "A size with its unit: 50 GiB (IEC 80000-13, 1024-based) or 50 GB (SI, 1000-based). A bare number is refused.", examples: ["50 GiB", "1.5 TiB", "500 GB"] }, schema94 = { title: "Sentence", type: "string", pattern: "\\S", description: "A few words that say why; not blank.", examples: ["superseded by plates-1"] }, schema98 = { title: "MountPoint", type: "string", pattern: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$", description: "Where the guest mounts it: an absolute path, a drive letter such as D:, or swap.", examples: ["/plates"] }, schema99 = { title: "FileSystemType", type: "string", enum: ["ext2", "ext3", "ext4", "xfs", "btrfs", "zfs", "ntfs", "vfat", "gfs2", "ocfs2", "swap"], examples: ["ext4"], description: "The file system's type, which decides whether it can shrink and whether two servers may mount it." }, pattern13 = new RegExp("^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", "u"), pattern17 = new RegExp("^[^\\u0000-\\u001f\\u007f-\\u009f]{1,255}$", "u"), pattern26 = new RegExp("^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", "u"), pattern28 = new RegExp("\\S", "u"), pattern31 = new RegExp("^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$", "u"), schema81 = { title: "Labels", type: "object", propertyNames: { $ref: "#/$defs/name" }, additionalProperties: { type: "string" }, description: "Labels of your own, name to text; limits and rules can select by them." };
function validate59(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate59.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    for (let key0 in data) {
      let _errs1 = errors;
      if (typeof key0 == "string") {
        if (!pattern13.test(key0)) {
          let err0 = { instancePath, schemaPath: "#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: key0, propertyName: key0 };
          vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
        }
      } else {
        let err1 = { instancePath, schemaPath: "#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: key0, propertyName: key0 };
        vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
      }
      var valid0 = _errs1 === errors;
      if (!valid0) {
        let err2 = { instancePath, schemaPath: "#/propertyNames", keyword: "propertyNames", params: { propertyName: key0 }, message: "property name must be valid", schema: schema81.propertyNames, parentSchema: schema81, data };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    }
    for (let key1 in data) {
      let data0 = data[key1];
      if (typeof data0 != "string") {
        let err3 = { instancePath: instancePath + "/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/additionalProperties/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema81.additionalProperties.type, parentSchema: schema81.additionalProperties, data: data0 };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    }
  } else {
    let err4 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema81.type, parentSchema: schema81, data };
    vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
  }
  return validate59.errors = vErrors, errors === 0;
}
validate59.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema97 = { title: "WholeVolumeFileSystemDeclaration", type: "object", additionalProperties: !1, required: ["mount", "type"], description: "The file system on this volume itself, outside any group.", properties: { mount: { $ref: "#/$defs/mountPoint" }, type: { $ref: "#/$defs/fileSystemType" }, size: { $ref: "common.json#/$defs/size", description: "The size it was created with or grown to; the whole volume if left out." }, existing: { type: "boolean", description: "true means that it is already there and is only being declared: nothing is created, and nothing is overwritten. If left out, that of its volume; only while the file system is new to main." }, reserve: { type: "number", minimum: 0, maximum: 0.5, default: 0.05, description: "ext2, ext3 and ext4: the share of it that only the superuser may fill, such as 0.01. mke2fs 1.47.0 keeps 0.05." }, "block-size": { $ref: "common.json#/$defs/size", description: "ext2, ext3, ext4 and xfs: its block size. mke2fs 1.47.0 uses 1 KiB below 512 MiB, and 4 KiB above; mkfs.xfs 6.1.0 uses 4 KiB." }, "inode-ratio": { $ref: "common.json#/$defs/size", description: "ext2, ext3 and ext4: how much of the device there is for each inode. mke2fs 1.47.0 uses 4 KiB below 512 MiB, 32 KiB from 4 TiB, and 16 KiB between." }, "reverse-map": { type: "boolean", default: !1, description: "xfs: whether it keeps a map from each block to what owns it, which takes more than a hundredth of its capacity. mkfs.xfs 6.1.0 does not unless told to; later versions may." } } };
function validate62(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate62.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.mount === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mount" }, message: "must have required property 'mount'", schema: schema97.required, parentSchema: schema97, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.type === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "type" }, message: "must have required property 'type'", schema: schema97.required, parentSchema: schema97, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "mount" || key0 === "type" || key0 === "size" || key0 === "existing" || key0 === "reserve" || key0 === "block-size" || key0 === "inode-ratio" || key0 === "reverse-map")) {
        let err2 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema97, data };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    if (data.mount !== void 0) {
      let data0 = data.mount;
      if (typeof data0 == "string") {
        if (!pattern31.test(data0)) {
          let err3 = { instancePath: instancePath + "/mount", schemaPath: "#/$defs/mountPoint/pattern", keyword: "pattern", params: { pattern: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$" }, message: 'must match pattern "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$"', schema: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$", parentSchema: schema98, data: data0 };
          vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
        }
      } else {
        let err4 = { instancePath: instancePath + "/mount", schemaPath: "#/$defs/mountPoint/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema98.type, parentSchema: schema98, data: data0 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
    if (data.type !== void 0) {
      let data1 = data.type;
      if (typeof data1 != "string") {
        let err5 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/fileSystemType/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema99.type, parentSchema: schema99, data: data1 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
      if (!(data1 === "ext2" || data1 === "ext3" || data1 === "ext4" || data1 === "xfs" || data1 === "btrfs" || data1 === "zfs" || data1 === "ntfs" || data1 === "vfat" || data1 === "gfs2" || data1 === "ocfs2" || data1 === "swap")) {
        let err6 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/fileSystemType/enum", keyword: "enum", params: { allowedValues: schema99.enum }, message: "must be equal to one of the allowed values", schema: schema99.enum, parentSchema: schema99, data: data1 };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    }
    if (data.size !== void 0) {
      let data2 = data.size;
      if (typeof data2 == "string") {
        if (!pattern26.test(data2)) {
          let err7 = { instancePath: instancePath + "/size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data2 };
          vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
        }
      } else {
        let err8 = { instancePath: instancePath + "/size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data2 };
        vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
      }
    }
    if (data.existing !== void 0) {
      let data3 = data.existing;
      if (typeof data3 != "boolean") {
        let err9 = { instancePath: instancePath + "/existing", schemaPath: "#/properties/existing/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema97.properties.existing.type, parentSchema: schema97.properties.existing, data: data3 };
        vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
      }
    }
    if (data.reserve !== void 0) {
      let data4 = data.reserve;
      if (typeof data4 == "number" && isFinite(data4)) {
        if (data4 > 0.5 || isNaN(data4)) {
          let err10 = { instancePath: instancePath + "/reserve", schemaPath: "#/properties/reserve/maximum", keyword: "maximum", params: { comparison: "<=", limit: 0.5 }, message: "must be <= 0.5", schema: 0.5, parentSchema: schema97.properties.reserve, data: data4 };
          vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
        }
        if (data4 < 0 || isNaN(data4)) {
          let err11 = { instancePath: instancePath + "/reserve", schemaPath: "#/properties/reserve/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema97.properties.reserve, data: data4 };
          vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
        }
      } else {
        let err12 = { instancePath: instancePath + "/reserve", schemaPath: "#/properties/reserve/type", keyword: "type", params: { type: "number" }, message: "must be number", schema: schema97.properties.reserve.type, parentSchema: schema97.properties.reserve, data: data4 };
        vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
      }
    }
    if (data["block-size"] !== void 0) {
      let data5 = data["block-size"];
      if (typeof data5 == "string") {
        if (!pattern26.test(data5)) {
          let err13 = { instancePath: instancePath + "/block-size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data5 };
          vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
        }
      } else {
        let err14 = { instancePath: instancePath + "/block-size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data5 };
        vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
      }
    }
    if (data["inode-ratio"] !== void 0) {
      let data6 = data["inode-ratio"];
      if (typeof data6 == "string") {
        if (!pattern26.test(data6)) {
          let err15 = { instancePath: instancePath + "/inode-ratio", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data6 };
          vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
        }
      } else {
        let err16 = { instancePath: instancePath + "/inode-ratio", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data6 };
        vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
      }
    }
    if (data["reverse-map"] !== void 0) {
      let data7 = data["reverse-map"];
      if (typeof data7 != "boolean") {
        let err17 = { instancePath: instancePath + "/reverse-map", schemaPath: "#/properties/reverse-map/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema97.properties["reverse-map"].type, parentSchema: schema97.properties["reverse-map"], data: data7 };
        vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
      }
    }
  } else {
    let err18 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema97.type, parentSchema: schema97, data };
    vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
  }
  return validate62.errors = vErrors, errors === 0;
}
validate62.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate58(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate58.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    for (let key0 in data)
      if (!func1.call(schema78.properties, key0)) {
        let err0 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema78, data };
        vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
      }
    if (data.team !== void 0) {
      let data0 = data.team;
      if (typeof data0 == "string") {
        if (!pattern13.test(data0)) {
          let err1 = { instancePath: instancePath + "/team", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data0 };
          vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
        }
      } else {
        let err2 = { instancePath: instancePath + "/team", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data0 };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    }
    if (data.site !== void 0) {
      let data1 = data.site;
      if (typeof data1 == "string") {
        if (!pattern13.test(data1)) {
          let err3 = { instancePath: instancePath + "/site", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data1 };
          vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
        }
      } else {
        let err4 = { instancePath: instancePath + "/site", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data1 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
    if (data.labels !== void 0 && (validate59(data.labels, { instancePath: instancePath + "/labels", parentData: data, parentDataProperty: "labels", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate59.errors : vErrors.concat(validate59.errors), errors = vErrors.length)), data.existing !== void 0) {
      let data3 = data.existing;
      if (typeof data3 != "boolean") {
        let err5 = { instancePath: instancePath + "/existing", schemaPath: "#/properties/existing/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema78.properties.existing.type, parentSchema: schema78.properties.existing, data: data3 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
    }
    if (data.servers !== void 0) {
      let data4 = data.servers;
      if (data4 && typeof data4 == "object" && !Array.isArray(data4)) {
        for (let key1 in data4) {
          let _errs13 = errors;
          if (typeof key1 == "string") {
            if (!pattern13.test(key1)) {
              let err6 = { instancePath: instancePath + "/servers", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: key1, propertyName: key1 };
              vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
            }
          } else {
            let err7 = { instancePath: instancePath + "/servers", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: key1, propertyName: key1 };
            vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
          }
          var valid3 = _errs13 === errors;
          if (!valid3) {
            let err8 = { instancePath: instancePath + "/servers", schemaPath: "#/properties/servers/propertyNames", keyword: "propertyNames", params: { propertyName: key1 }, message: "property name must be valid", schema: schema78.properties.servers.propertyNames, parentSchema: schema78.properties.servers, data: data4 };
            vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
          }
        }
        for (let key2 in data4) {
          let data5 = data4[key2];
          if (data5 && typeof data5 == "object" && !Array.isArray(data5)) {
            for (let key3 in data5)
              if (!func1.call(schema78.properties.servers.additionalProperties.properties, key3)) {
                let err9 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/servers/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema78.properties.servers.additionalProperties, data: data5 };
                vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
              }
            if (data5.id !== void 0) {
              let data6 = data5.id;
              if (typeof data6 == "string") {
                if (!pattern17.test(data6)) {
                  let err10 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/id", schemaPath: "common.json#/$defs/providerId/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]{1,255}$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]{1,255}$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]{1,255}$", parentSchema: schema84, data: data6 };
                  vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
                }
              } else {
                let err11 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/id", schemaPath: "common.json#/$defs/providerId/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema84.type, parentSchema: schema84, data: data6 };
                vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
              }
            }
            if (data5.power !== void 0) {
              let data7 = data5.power;
              if (typeof data7 != "string") {
                let err12 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/power", schemaPath: "#/properties/servers/additionalProperties/properties/power/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema78.properties.servers.additionalProperties.properties.power.type, parentSchema: schema78.properties.servers.additionalProperties.properties.power, data: data7 };
                vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
              }
              if (!(data7 === "running" || data7 === "stopped")) {
                let err13 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/power", schemaPath: "#/properties/servers/additionalProperties/properties/power/enum", keyword: "enum", params: { allowedValues: schema78.properties.servers.additionalProperties.properties.power.enum }, message: "must be equal to one of the allowed values", schema: schema78.properties.servers.additionalProperties.properties.power.enum, parentSchema: schema78.properties.servers.additionalProperties.properties.power, data: data7 };
                vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
              }
            }
            if (data5.boot !== void 0) {
              let data8 = data5.boot;
              if (typeof data8 == "string") {
                if (!pattern13.test(data8)) {
                  let err14 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/boot", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data8 };
                  vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
                }
              } else {
                let err15 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/boot", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data8 };
                vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
              }
            }
            if (data5.guest !== void 0) {
              let data9 = data5.guest;
              if (typeof data9 == "string") {
                if (!pattern13.test(data9)) {
                  let err16 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/guest", schemaPath: "#/properties/servers/additionalProperties/properties/guest/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema78.properties.servers.additionalProperties.properties.guest, data: data9 };
                  vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
                }
              } else {
                let err17 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/guest", schemaPath: "#/properties/servers/additionalProperties/properties/guest/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema78.properties.servers.additionalProperties.properties.guest.type, parentSchema: schema78.properties.servers.additionalProperties.properties.guest, data: data9 };
                vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
              }
            }
            if (data5.type !== void 0) {
              let data10 = data5.type;
              if (typeof data10 == "string") {
                if (!pattern13.test(data10)) {
                  let err18 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/type", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data10 };
                  vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
                }
              } else {
                let err19 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/type", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data10 };
                vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
              }
            }
            if (data5.iops !== void 0) {
              let data11 = data5.iops;
              if (!(typeof data11 == "number" && !(data11 % 1) && !isNaN(data11) && isFinite(data11))) {
                let err20 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/iops", schemaPath: "#/properties/servers/additionalProperties/properties/iops/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema78.properties.servers.additionalProperties.properties.iops.type, parentSchema: schema78.properties.servers.additionalProperties.properties.iops, data: data11 };
                vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
              }
              if (typeof data11 == "number" && isFinite(data11) && (data11 < 0 || isNaN(data11))) {
                let err21 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/iops", schemaPath: "#/properties/servers/additionalProperties/properties/iops/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema78.properties.servers.additionalProperties.properties.iops, data: data11 };
                vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
              }
            }
            if (data5["attachment-slots"] !== void 0) {
              let data12 = data5["attachment-slots"];
              if (!(typeof data12 == "number" && !(data12 % 1) && !isNaN(data12) && isFinite(data12))) {
                let err22 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/attachment-slots", schemaPath: "#/properties/servers/additionalProperties/properties/attachment-slots/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema78.properties.servers.additionalProperties.properties["attachment-slots"].type, parentSchema: schema78.properties.servers.additionalProperties.properties["attachment-slots"], data: data12 };
                vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
              }
              if (typeof data12 == "number" && isFinite(data12) && (data12 < 0 || isNaN(data12))) {
                let err23 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/attachment-slots", schemaPath: "#/properties/servers/additionalProperties/properties/attachment-slots/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema78.properties.servers.additionalProperties.properties["attachment-slots"], data: data12 };
                vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
              }
            }
            if (data5.team !== void 0) {
              let data13 = data5.team;
              if (typeof data13 == "string") {
                if (!pattern13.test(data13)) {
                  let err24 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data13 };
                  vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
                }
              } else {
                let err25 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data13 };
                vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
              }
            }
            if (data5.site !== void 0) {
              let data14 = data5.site;
              if (typeof data14 == "string") {
                if (!pattern13.test(data14)) {
                  let err26 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/site", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data14 };
                  vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
                }
              } else {
                let err27 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/site", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data14 };
                vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
              }
            }
            if (data5.labels !== void 0 && (validate59(data5.labels, { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/labels", parentData: data5, parentDataProperty: "labels", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate59.errors : vErrors.concat(validate59.errors), errors = vErrors.length)), data5.existing !== void 0) {
              let data16 = data5.existing;
              if (typeof data16 != "boolean") {
                let err28 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/existing", schemaPath: "#/properties/servers/additionalProperties/properties/existing/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema78.properties.servers.additionalProperties.properties.existing.type, parentSchema: schema78.properties.servers.additionalProperties.properties.existing, data: data16 };
                vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
              }
            }
            if (data5.formerly !== void 0) {
              let data17 = data5.formerly;
              if (typeof data17 == "string") {
                if (!pattern13.test(data17)) {
                  let err29 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data17 };
                  vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
                }
              } else {
                let err30 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data17 };
                vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
              }
            }
          } else {
            let err31 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/servers/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema78.properties.servers.additionalProperties.type, parentSchema: schema78.properties.servers.additionalProperties, data: data5 };
            vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
          }
        }
      } else {
        let err32 = { instancePath: instancePath + "/servers", schemaPath: "#/properties/servers/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema78.properties.servers.type, parentSchema: schema78.properties.servers, data: data4 };
        vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
      }
    }
    if (data.volumes !== void 0) {
      let data18 = data.volumes;
      if (data18 && typeof data18 == "object" && !Array.isArray(data18)) {
        for (let key4 in data18) {
          let _errs51 = errors;
          if (typeof key4 == "string") {
            if (!pattern13.test(key4)) {
              let err33 = { instancePath: instancePath + "/volumes", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: key4, propertyName: key4 };
              vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
            }
          } else {
            let err34 = { instancePath: instancePath + "/volumes", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: key4, propertyName: key4 };
            vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
          }
          var valid13 = _errs51 === errors;
          if (!valid13) {
            let err35 = { instancePath: instancePath + "/volumes", schemaPath: "#/properties/volumes/propertyNames", keyword: "propertyNames", params: { propertyName: key4 }, message: "property name must be valid", schema: schema78.properties.volumes.propertyNames, parentSchema: schema78.properties.volumes, data: data18 };
            vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
          }
        }
        for (let key5 in data18) {
          let data19 = data18[key5];
          if (data19 && typeof data19 == "object" && !Array.isArray(data19)) {
            if (data19.size === void 0) {
              let err36 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volumes/additionalProperties/required", keyword: "required", params: { missingProperty: "size" }, message: "must have required property 'size'", schema: schema78.properties.volumes.additionalProperties.required, parentSchema: schema78.properties.volumes.additionalProperties, data: data19 };
              vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
            }
            if (data19.tier === void 0) {
              let err37 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volumes/additionalProperties/required", keyword: "required", params: { missingProperty: "tier" }, message: "must have required property 'tier'", schema: schema78.properties.volumes.additionalProperties.required, parentSchema: schema78.properties.volumes.additionalProperties, data: data19 };
              vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
            }
            for (let key6 in data19)
              if (!func1.call(schema78.properties.volumes.additionalProperties.properties, key6)) {
                let err38 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volumes/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key6 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema78.properties.volumes.additionalProperties, data: data19 };
                vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
              }
            if (data19.id !== void 0) {
              let data20 = data19.id;
              if (typeof data20 == "string") {
                if (!pattern17.test(data20)) {
                  let err39 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/id", schemaPath: "common.json#/$defs/providerId/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]{1,255}$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]{1,255}$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]{1,255}$", parentSchema: schema84, data: data20 };
                  vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
                }
              } else {
                let err40 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/id", schemaPath: "common.json#/$defs/providerId/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema84.type, parentSchema: schema84, data: data20 };
                vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
              }
            }
            if (data19.size !== void 0) {
              let data21 = data19.size;
              if (typeof data21 == "string") {
                if (!pattern26.test(data21)) {
                  let err41 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data21 };
                  vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
                }
              } else {
                let err42 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data21 };
                vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
              }
            }
            if (data19.tier !== void 0) {
              let data22 = data19.tier;
              if (typeof data22 == "string") {
                if (!pattern13.test(data22)) {
                  let err43 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/tier", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data22 };
                  vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
                }
              } else {
                let err44 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/tier", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data22 };
                vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
              }
            }
            if (data19.shareable !== void 0) {
              let data23 = data19.shareable;
              if (typeof data23 != "boolean") {
                let err45 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/shareable", schemaPath: "#/properties/volumes/additionalProperties/properties/shareable/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema78.properties.volumes.additionalProperties.properties.shareable.type, parentSchema: schema78.properties.volumes.additionalProperties.properties.shareable, data: data23 };
                vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
              }
            }
            if (data19.protected !== void 0) {
              let data24 = data19.protected;
              if (typeof data24 != "boolean") {
                let err46 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/protected", schemaPath: "#/properties/volumes/additionalProperties/properties/protected/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema78.properties.volumes.additionalProperties.properties.protected.type, parentSchema: schema78.properties.volumes.additionalProperties.properties.protected, data: data24 };
                vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
              }
            }
            if (data19.owner !== void 0) {
              let data25 = data19.owner;
              if (typeof data25 == "string") {
                if (!pattern28.test(data25)) {
                  let err47 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/owner", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema94, data: data25 };
                  vErrors === null ? vErrors = [err47] : vErrors.push(err47), errors++;
                }
              } else {
                let err48 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/owner", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema94.type, parentSchema: schema94, data: data25 };
                vErrors === null ? vErrors = [err48] : vErrors.push(err48), errors++;
              }
            }
            if (data19.reason !== void 0) {
              let data26 = data19.reason;
              if (typeof data26 == "string") {
                if (!pattern28.test(data26)) {
                  let err49 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/reason", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema94, data: data26 };
                  vErrors === null ? vErrors = [err49] : vErrors.push(err49), errors++;
                }
              } else {
                let err50 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/reason", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema94.type, parentSchema: schema94, data: data26 };
                vErrors === null ? vErrors = [err50] : vErrors.push(err50), errors++;
              }
            }
            if (data19["retain-until"] !== void 0) {
              let data27 = data19["retain-until"];
              if (typeof data27 == "string") {
                if (!pattern4.test(data27)) {
                  let err51 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/retain-until", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data27 };
                  vErrors === null ? vErrors = [err51] : vErrors.push(err51), errors++;
                }
              } else {
                let err52 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/retain-until", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data27 };
                vErrors === null ? vErrors = [err52] : vErrors.push(err52), errors++;
              }
            }
            if (data19["file-system"] !== void 0 && (validate62(data19["file-system"], { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-system", parentData: data19, parentDataProperty: "file-system", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors), errors = vErrors.length)), data19.team !== void 0) {
              let data29 = data19.team;
              if (typeof data29 == "string") {
                if (!pattern13.test(data29)) {
                  let err53 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data29 };
                  vErrors === null ? vErrors = [err53] : vErrors.push(err53), errors++;
                }
              } else {
                let err54 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data29 };
                vErrors === null ? vErrors = [err54] : vErrors.push(err54), errors++;
              }
            }
            if (data19.site !== void 0) {
              let data30 = data19.site;
              if (typeof data30 == "string") {
                if (!pattern13.test(data30)) {
                  let err55 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/site", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data30 };
                  vErrors === null ? vErrors = [err55] : vErrors.push(err55), errors++;
                }
              } else {
                let err56 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/site", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data30 };
                vErrors === null ? vErrors = [err56] : vErrors.push(err56), errors++;
              }
            }
            if (data19.labels !== void 0 && (validate59(data19.labels, { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/labels", parentData: data19, parentDataProperty: "labels", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate59.errors : vErrors.concat(validate59.errors), errors = vErrors.length)), data19.existing !== void 0) {
              let data32 = data19.existing;
              if (typeof data32 != "boolean") {
                let err57 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/existing", schemaPath: "#/properties/volumes/additionalProperties/properties/existing/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema78.properties.volumes.additionalProperties.properties.existing.type, parentSchema: schema78.properties.volumes.additionalProperties.properties.existing, data: data32 };
                vErrors === null ? vErrors = [err57] : vErrors.push(err57), errors++;
              }
            }
            if (data19.formerly !== void 0) {
              let data33 = data19.formerly;
              if (typeof data33 == "string") {
                if (!pattern13.test(data33)) {
                  let err58 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data33 };
                  vErrors === null ? vErrors = [err58] : vErrors.push(err58), errors++;
                }
              } else {
                let err59 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data33 };
                vErrors === null ? vErrors = [err59] : vErrors.push(err59), errors++;
              }
            }
          } else {
            let err60 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volumes/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema78.properties.volumes.additionalProperties.type, parentSchema: schema78.properties.volumes.additionalProperties, data: data19 };
            vErrors === null ? vErrors = [err60] : vErrors.push(err60), errors++;
          }
        }
      } else {
        let err61 = { instancePath: instancePath + "/volumes", schemaPath: "#/properties/volumes/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema78.properties.volumes.type, parentSchema: schema78.properties.volumes, data: data18 };
        vErrors === null ? vErrors = [err61] : vErrors.push(err61), errors++;
      }
    }
    if (data.attachments !== void 0) {
      let data34 = data.attachments;
      if (Array.isArray(data34)) {
        let len0 = data34.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data35 = data34[i0];
          if (data35 && typeof data35 == "object" && !Array.isArray(data35)) {
            if (data35.volume === void 0) {
              let err62 = { instancePath: instancePath + "/attachments/" + i0, schemaPath: "#/properties/attachments/items/required", keyword: "required", params: { missingProperty: "volume" }, message: "must have required property 'volume'", schema: schema78.properties.attachments.items.required, parentSchema: schema78.properties.attachments.items, data: data35 };
              vErrors === null ? vErrors = [err62] : vErrors.push(err62), errors++;
            }
            if (data35.server === void 0) {
              let err63 = { instancePath: instancePath + "/attachments/" + i0, schemaPath: "#/properties/attachments/items/required", keyword: "required", params: { missingProperty: "server" }, message: "must have required property 'server'", schema: schema78.properties.attachments.items.required, parentSchema: schema78.properties.attachments.items, data: data35 };
              vErrors === null ? vErrors = [err63] : vErrors.push(err63), errors++;
            }
            for (let key7 in data35)
              if (!(key7 === "volume" || key7 === "server" || key7 === "existing")) {
                let err64 = { instancePath: instancePath + "/attachments/" + i0, schemaPath: "#/properties/attachments/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key7 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema78.properties.attachments.items, data: data35 };
                vErrors === null ? vErrors = [err64] : vErrors.push(err64), errors++;
              }
            if (data35.volume !== void 0) {
              let data36 = data35.volume;
              if (typeof data36 == "string") {
                if (!pattern13.test(data36)) {
                  let err65 = { instancePath: instancePath + "/attachments/" + i0 + "/volume", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data36 };
                  vErrors === null ? vErrors = [err65] : vErrors.push(err65), errors++;
                }
              } else {
                let err66 = { instancePath: instancePath + "/attachments/" + i0 + "/volume", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data36 };
                vErrors === null ? vErrors = [err66] : vErrors.push(err66), errors++;
              }
            }
            if (data35.server !== void 0) {
              let data37 = data35.server;
              if (typeof data37 == "string") {
                if (!pattern13.test(data37)) {
                  let err67 = { instancePath: instancePath + "/attachments/" + i0 + "/server", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data37 };
                  vErrors === null ? vErrors = [err67] : vErrors.push(err67), errors++;
                }
              } else {
                let err68 = { instancePath: instancePath + "/attachments/" + i0 + "/server", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data37 };
                vErrors === null ? vErrors = [err68] : vErrors.push(err68), errors++;
              }
            }
            if (data35.existing !== void 0) {
              let data38 = data35.existing;
              if (typeof data38 != "boolean") {
                let err69 = { instancePath: instancePath + "/attachments/" + i0 + "/existing", schemaPath: "#/properties/attachments/items/properties/existing/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema78.properties.attachments.items.properties.existing.type, parentSchema: schema78.properties.attachments.items.properties.existing, data: data38 };
                vErrors === null ? vErrors = [err69] : vErrors.push(err69), errors++;
              }
            }
          } else {
            let err70 = { instancePath: instancePath + "/attachments/" + i0, schemaPath: "#/properties/attachments/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema78.properties.attachments.items.type, parentSchema: schema78.properties.attachments.items, data: data35 };
            vErrors === null ? vErrors = [err70] : vErrors.push(err70), errors++;
          }
        }
      } else {
        let err71 = { instancePath: instancePath + "/attachments", schemaPath: "#/properties/attachments/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema78.properties.attachments.type, parentSchema: schema78.properties.attachments, data: data34 };
        vErrors === null ? vErrors = [err71] : vErrors.push(err71), errors++;
      }
    }
    if (data["volume-groups"] !== void 0) {
      let data39 = data["volume-groups"];
      if (data39 && typeof data39 == "object" && !Array.isArray(data39)) {
        for (let key8 in data39) {
          let _errs108 = errors;
          if (typeof key8 == "string") {
            if (!pattern13.test(key8)) {
              let err72 = { instancePath: instancePath + "/volume-groups", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: key8, propertyName: key8 };
              vErrors === null ? vErrors = [err72] : vErrors.push(err72), errors++;
            }
          } else {
            let err73 = { instancePath: instancePath + "/volume-groups", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: key8, propertyName: key8 };
            vErrors === null ? vErrors = [err73] : vErrors.push(err73), errors++;
          }
          var valid31 = _errs108 === errors;
          if (!valid31) {
            let err74 = { instancePath: instancePath + "/volume-groups", schemaPath: "#/properties/volume-groups/propertyNames", keyword: "propertyNames", params: { propertyName: key8 }, message: "property name must be valid", schema: schema78.properties["volume-groups"].propertyNames, parentSchema: schema78.properties["volume-groups"], data: data39 };
            vErrors === null ? vErrors = [err74] : vErrors.push(err74), errors++;
          }
        }
        for (let key9 in data39) {
          let data40 = data39[key9];
          if (data40 && typeof data40 == "object" && !Array.isArray(data40)) {
            if (data40.members === void 0) {
              let err75 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/required", keyword: "required", params: { missingProperty: "members" }, message: "must have required property 'members'", schema: schema78.properties["volume-groups"].additionalProperties.required, parentSchema: schema78.properties["volume-groups"].additionalProperties, data: data40 };
              vErrors === null ? vErrors = [err75] : vErrors.push(err75), errors++;
            }
            for (let key10 in data40)
              if (!func1.call(schema78.properties["volume-groups"].additionalProperties.properties, key10)) {
                let err76 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key10 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema78.properties["volume-groups"].additionalProperties, data: data40 };
                vErrors === null ? vErrors = [err76] : vErrors.push(err76), errors++;
              }
            if (data40.extent !== void 0) {
              let data41 = data40.extent;
              if (typeof data41 == "string") {
                if (!pattern26.test(data41)) {
                  let err77 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/extent", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data41 };
                  vErrors === null ? vErrors = [err77] : vErrors.push(err77), errors++;
                }
              } else {
                let err78 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/extent", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data41 };
                vErrors === null ? vErrors = [err78] : vErrors.push(err78), errors++;
              }
            }
            if (data40.members !== void 0) {
              let data42 = data40.members;
              if (Array.isArray(data42)) {
                if (data42.length < 1) {
                  let err79 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/members", schemaPath: "#/properties/volume-groups/additionalProperties/properties/members/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties.members, data: data42 };
                  vErrors === null ? vErrors = [err79] : vErrors.push(err79), errors++;
                }
                let len1 = data42.length;
                for (let i1 = 0; i1 < len1; i1++) {
                  let data43 = data42[i1];
                  if (typeof data43 == "string") {
                    if (!pattern13.test(data43)) {
                      let err80 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/members/" + i1, schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data43 };
                      vErrors === null ? vErrors = [err80] : vErrors.push(err80), errors++;
                    }
                  } else {
                    let err81 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/members/" + i1, schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data43 };
                    vErrors === null ? vErrors = [err81] : vErrors.push(err81), errors++;
                  }
                }
              } else {
                let err82 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/members", schemaPath: "#/properties/volume-groups/additionalProperties/properties/members/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema78.properties["volume-groups"].additionalProperties.properties.members.type, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties.members, data: data42 };
                vErrors === null ? vErrors = [err82] : vErrors.push(err82), errors++;
              }
            }
            if (data40.layout !== void 0) {
              let data44 = data40.layout;
              if (typeof data44 != "string") {
                let err83 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/layout", schemaPath: "#/properties/volume-groups/additionalProperties/properties/layout/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema78.properties["volume-groups"].additionalProperties.properties.layout.type, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties.layout, data: data44 };
                vErrors === null ? vErrors = [err83] : vErrors.push(err83), errors++;
              }
              if (!(data44 === "linear" || data44 === "striped" || data44 === "mirrored")) {
                let err84 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/layout", schemaPath: "#/properties/volume-groups/additionalProperties/properties/layout/enum", keyword: "enum", params: { allowedValues: schema78.properties["volume-groups"].additionalProperties.properties.layout.enum }, message: "must be equal to one of the allowed values", schema: schema78.properties["volume-groups"].additionalProperties.properties.layout.enum, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties.layout, data: data44 };
                vErrors === null ? vErrors = [err84] : vErrors.push(err84), errors++;
              }
            }
            if (data40.stripes !== void 0) {
              let data45 = data40.stripes;
              if (!(typeof data45 == "number" && !(data45 % 1) && !isNaN(data45) && isFinite(data45))) {
                let err85 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/stripes", schemaPath: "#/properties/volume-groups/additionalProperties/properties/stripes/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema78.properties["volume-groups"].additionalProperties.properties.stripes.type, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties.stripes, data: data45 };
                vErrors === null ? vErrors = [err85] : vErrors.push(err85), errors++;
              }
              if (typeof data45 == "number" && isFinite(data45) && (data45 < 2 || isNaN(data45))) {
                let err86 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/stripes", schemaPath: "#/properties/volume-groups/additionalProperties/properties/stripes/minimum", keyword: "minimum", params: { comparison: ">=", limit: 2 }, message: "must be >= 2", schema: 2, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties.stripes, data: data45 };
                vErrors === null ? vErrors = [err86] : vErrors.push(err86), errors++;
              }
            }
            if (data40.copies !== void 0) {
              let data46 = data40.copies;
              if (!(typeof data46 == "number" && !(data46 % 1) && !isNaN(data46) && isFinite(data46))) {
                let err87 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/copies", schemaPath: "#/properties/volume-groups/additionalProperties/properties/copies/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema78.properties["volume-groups"].additionalProperties.properties.copies.type, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties.copies, data: data46 };
                vErrors === null ? vErrors = [err87] : vErrors.push(err87), errors++;
              }
              if (typeof data46 == "number" && isFinite(data46) && (data46 < 2 || isNaN(data46))) {
                let err88 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/copies", schemaPath: "#/properties/volume-groups/additionalProperties/properties/copies/minimum", keyword: "minimum", params: { comparison: ">=", limit: 2 }, message: "must be >= 2", schema: 2, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties.copies, data: data46 };
                vErrors === null ? vErrors = [err88] : vErrors.push(err88), errors++;
              }
            }
            if (data40["file-systems"] !== void 0) {
              let data47 = data40["file-systems"];
              if (data47 && typeof data47 == "object" && !Array.isArray(data47)) {
                for (let key11 in data47) {
                  let _errs131 = errors;
                  if (typeof key11 == "string") {
                    if (!pattern31.test(key11)) {
                      let err89 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems", schemaPath: "#/$defs/mountPoint/pattern", keyword: "pattern", params: { pattern: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$" }, message: 'must match pattern "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$"', schema: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$", parentSchema: schema98, data: key11, propertyName: key11 };
                      vErrors === null ? vErrors = [err89] : vErrors.push(err89), errors++;
                    }
                  } else {
                    let err90 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems", schemaPath: "#/$defs/mountPoint/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema98.type, parentSchema: schema98, data: key11, propertyName: key11 };
                    vErrors === null ? vErrors = [err90] : vErrors.push(err90), errors++;
                  }
                  var valid39 = _errs131 === errors;
                  if (!valid39) {
                    let err91 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems", schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/propertyNames", keyword: "propertyNames", params: { propertyName: key11 }, message: "property name must be valid", schema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].propertyNames, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"], data: data47 };
                    vErrors === null ? vErrors = [err91] : vErrors.push(err91), errors++;
                  }
                }
                for (let key12 in data47) {
                  let data48 = data47[key12];
                  if (data48 && typeof data48 == "object" && !Array.isArray(data48)) {
                    if (data48.size === void 0) {
                      let err92 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/required", keyword: "required", params: { missingProperty: "size" }, message: "must have required property 'size'", schema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.required, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties, data: data48 };
                      vErrors === null ? vErrors = [err92] : vErrors.push(err92), errors++;
                    }
                    if (data48.type === void 0) {
                      let err93 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/required", keyword: "required", params: { missingProperty: "type" }, message: "must have required property 'type'", schema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.required, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties, data: data48 };
                      vErrors === null ? vErrors = [err93] : vErrors.push(err93), errors++;
                    }
                    for (let key13 in data48)
                      if (!(key13 === "size" || key13 === "type" || key13 === "existing" || key13 === "reserve" || key13 === "block-size" || key13 === "inode-ratio" || key13 === "reverse-map")) {
                        let err94 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key13 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties, data: data48 };
                        vErrors === null ? vErrors = [err94] : vErrors.push(err94), errors++;
                      }
                    if (data48.size !== void 0) {
                      let data49 = data48.size;
                      if (typeof data49 == "string") {
                        if (!pattern26.test(data49)) {
                          let err95 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data49 };
                          vErrors === null ? vErrors = [err95] : vErrors.push(err95), errors++;
                        }
                      } else {
                        let err96 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data49 };
                        vErrors === null ? vErrors = [err96] : vErrors.push(err96), errors++;
                      }
                    }
                    if (data48.type !== void 0) {
                      let data50 = data48.type;
                      if (typeof data50 != "string") {
                        let err97 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/type", schemaPath: "#/$defs/fileSystemType/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema99.type, parentSchema: schema99, data: data50 };
                        vErrors === null ? vErrors = [err97] : vErrors.push(err97), errors++;
                      }
                      if (!(data50 === "ext2" || data50 === "ext3" || data50 === "ext4" || data50 === "xfs" || data50 === "btrfs" || data50 === "zfs" || data50 === "ntfs" || data50 === "vfat" || data50 === "gfs2" || data50 === "ocfs2" || data50 === "swap")) {
                        let err98 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/type", schemaPath: "#/$defs/fileSystemType/enum", keyword: "enum", params: { allowedValues: schema99.enum }, message: "must be equal to one of the allowed values", schema: schema99.enum, parentSchema: schema99, data: data50 };
                        vErrors === null ? vErrors = [err98] : vErrors.push(err98), errors++;
                      }
                    }
                    if (data48.existing !== void 0) {
                      let data51 = data48.existing;
                      if (typeof data51 != "boolean") {
                        let err99 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/existing", schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/properties/existing/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.properties.existing.type, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.properties.existing, data: data51 };
                        vErrors === null ? vErrors = [err99] : vErrors.push(err99), errors++;
                      }
                    }
                    if (data48.reserve !== void 0) {
                      let data52 = data48.reserve;
                      if (typeof data52 == "number" && isFinite(data52)) {
                        if (data52 > 0.5 || isNaN(data52)) {
                          let err100 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/reserve", schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/properties/reserve/maximum", keyword: "maximum", params: { comparison: "<=", limit: 0.5 }, message: "must be <= 0.5", schema: 0.5, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.properties.reserve, data: data52 };
                          vErrors === null ? vErrors = [err100] : vErrors.push(err100), errors++;
                        }
                        if (data52 < 0 || isNaN(data52)) {
                          let err101 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/reserve", schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/properties/reserve/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.properties.reserve, data: data52 };
                          vErrors === null ? vErrors = [err101] : vErrors.push(err101), errors++;
                        }
                      } else {
                        let err102 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/reserve", schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/properties/reserve/type", keyword: "type", params: { type: "number" }, message: "must be number", schema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.properties.reserve.type, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.properties.reserve, data: data52 };
                        vErrors === null ? vErrors = [err102] : vErrors.push(err102), errors++;
                      }
                    }
                    if (data48["block-size"] !== void 0) {
                      let data53 = data48["block-size"];
                      if (typeof data53 == "string") {
                        if (!pattern26.test(data53)) {
                          let err103 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/block-size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data53 };
                          vErrors === null ? vErrors = [err103] : vErrors.push(err103), errors++;
                        }
                      } else {
                        let err104 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/block-size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data53 };
                        vErrors === null ? vErrors = [err104] : vErrors.push(err104), errors++;
                      }
                    }
                    if (data48["inode-ratio"] !== void 0) {
                      let data54 = data48["inode-ratio"];
                      if (typeof data54 == "string") {
                        if (!pattern26.test(data54)) {
                          let err105 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/inode-ratio", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data54 };
                          vErrors === null ? vErrors = [err105] : vErrors.push(err105), errors++;
                        }
                      } else {
                        let err106 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/inode-ratio", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data54 };
                        vErrors === null ? vErrors = [err106] : vErrors.push(err106), errors++;
                      }
                    }
                    if (data48["reverse-map"] !== void 0) {
                      let data55 = data48["reverse-map"];
                      if (typeof data55 != "boolean") {
                        let err107 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/reverse-map", schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/properties/reverse-map/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.properties["reverse-map"].type, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.properties["reverse-map"], data: data55 };
                        vErrors === null ? vErrors = [err107] : vErrors.push(err107), errors++;
                      }
                    }
                  } else {
                    let err108 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.type, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties, data: data48 };
                    vErrors === null ? vErrors = [err108] : vErrors.push(err108), errors++;
                  }
                }
              } else {
                let err109 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems", schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"].type, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties["file-systems"], data: data47 };
                vErrors === null ? vErrors = [err109] : vErrors.push(err109), errors++;
              }
            }
            if (data40.team !== void 0) {
              let data56 = data40.team;
              if (typeof data56 == "string") {
                if (!pattern13.test(data56)) {
                  let err110 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data56 };
                  vErrors === null ? vErrors = [err110] : vErrors.push(err110), errors++;
                }
              } else {
                let err111 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data56 };
                vErrors === null ? vErrors = [err111] : vErrors.push(err111), errors++;
              }
            }
            if (data40.labels !== void 0 && (validate59(data40.labels, { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/labels", parentData: data40, parentDataProperty: "labels", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate59.errors : vErrors.concat(validate59.errors), errors = vErrors.length)), data40.formerly !== void 0) {
              let data58 = data40.formerly;
              if (typeof data58 == "string") {
                if (!pattern13.test(data58)) {
                  let err112 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data58 };
                  vErrors === null ? vErrors = [err112] : vErrors.push(err112), errors++;
                }
              } else {
                let err113 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data58 };
                vErrors === null ? vErrors = [err113] : vErrors.push(err113), errors++;
              }
            }
            if (data40.existing !== void 0) {
              let data59 = data40.existing;
              if (typeof data59 != "boolean") {
                let err114 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/existing", schemaPath: "#/properties/volume-groups/additionalProperties/properties/existing/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema78.properties["volume-groups"].additionalProperties.properties.existing.type, parentSchema: schema78.properties["volume-groups"].additionalProperties.properties.existing, data: data59 };
                vErrors === null ? vErrors = [err114] : vErrors.push(err114), errors++;
              }
            }
          } else {
            let err115 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema78.properties["volume-groups"].additionalProperties.type, parentSchema: schema78.properties["volume-groups"].additionalProperties, data: data40 };
            vErrors === null ? vErrors = [err115] : vErrors.push(err115), errors++;
          }
        }
      } else {
        let err116 = { instancePath: instancePath + "/volume-groups", schemaPath: "#/properties/volume-groups/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema78.properties["volume-groups"].type, parentSchema: schema78.properties["volume-groups"], data: data39 };
        vErrors === null ? vErrors = [err116] : vErrors.push(err116), errors++;
      }
    }
    if (data.retired !== void 0) {
      let data60 = data.retired;
      if (Array.isArray(data60)) {
        let len2 = data60.length;
        for (let i2 = 0; i2 < len2; i2++) {
          let data61 = data60[i2], _errs169 = errors, valid51 = !1, passing0 = null, _errs170 = errors;
          if (data61 && typeof data61 == "object" && !Array.isArray(data61) && data61.volume === void 0) {
            let err117 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/oneOf/0/required", keyword: "required", params: { missingProperty: "volume" }, message: "must have required property 'volume'", schema: schema78.properties.retired.items.oneOf[0].required, parentSchema: schema78.properties.retired.items.oneOf[0], data: data61 };
            vErrors === null ? vErrors = [err117] : vErrors.push(err117), errors++;
          }
          var _valid0 = _errs170 === errors;
          _valid0 && (valid51 = !0, passing0 = 0);
          let _errs171 = errors;
          if (data61 && typeof data61 == "object" && !Array.isArray(data61) && data61["file-system"] === void 0) {
            let err118 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/oneOf/1/required", keyword: "required", params: { missingProperty: "file-system" }, message: "must have required property 'file-system'", schema: schema78.properties.retired.items.oneOf[1].required, parentSchema: schema78.properties.retired.items.oneOf[1], data: data61 };
            vErrors === null ? vErrors = [err118] : vErrors.push(err118), errors++;
          }
          var _valid0 = _errs171 === errors;
          if (_valid0 && valid51 ? (valid51 = !1, passing0 = [passing0, 1]) : _valid0 && (valid51 = !0, passing0 = 1), valid51)
            errors = _errs169, vErrors !== null && (_errs169 ? vErrors.length = _errs169 : vErrors = null);
          else {
            let err119 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/oneOf", keyword: "oneOf", params: { passingSchemas: passing0 }, message: "must match exactly one schema in oneOf", schema: schema78.properties.retired.items.oneOf, parentSchema: schema78.properties.retired.items, data: data61 };
            vErrors === null ? vErrors = [err119] : vErrors.push(err119), errors++;
          }
          if (data61 && typeof data61 == "object" && !Array.isArray(data61)) {
            if (data61.on === void 0) {
              let err120 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/required", keyword: "required", params: { missingProperty: "on" }, message: "must have required property 'on'", schema: schema78.properties.retired.items.required, parentSchema: schema78.properties.retired.items, data: data61 };
              vErrors === null ? vErrors = [err120] : vErrors.push(err120), errors++;
            }
            if (data61.reason === void 0) {
              let err121 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/required", keyword: "required", params: { missingProperty: "reason" }, message: "must have required property 'reason'", schema: schema78.properties.retired.items.required, parentSchema: schema78.properties.retired.items, data: data61 };
              vErrors === null ? vErrors = [err121] : vErrors.push(err121), errors++;
            }
            for (let key14 in data61)
              if (!(key14 === "volume" || key14 === "file-system" || key14 === "on" || key14 === "reason" || key14 === "backup" || key14 === "backed-up")) {
                let err122 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key14 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema78.properties.retired.items, data: data61 };
                vErrors === null ? vErrors = [err122] : vErrors.push(err122), errors++;
              }
            if (data61.volume !== void 0) {
              let data62 = data61.volume;
              if (typeof data62 == "string") {
                if (!pattern13.test(data62)) {
                  let err123 = { instancePath: instancePath + "/retired/" + i2 + "/volume", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data62 };
                  vErrors === null ? vErrors = [err123] : vErrors.push(err123), errors++;
                }
              } else {
                let err124 = { instancePath: instancePath + "/retired/" + i2 + "/volume", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data62 };
                vErrors === null ? vErrors = [err124] : vErrors.push(err124), errors++;
              }
            }
            if (data61["file-system"] !== void 0) {
              let data63 = data61["file-system"];
              if (typeof data63 == "string") {
                if (!pattern28.test(data63)) {
                  let err125 = { instancePath: instancePath + "/retired/" + i2 + "/file-system", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema94, data: data63 };
                  vErrors === null ? vErrors = [err125] : vErrors.push(err125), errors++;
                }
              } else {
                let err126 = { instancePath: instancePath + "/retired/" + i2 + "/file-system", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema94.type, parentSchema: schema94, data: data63 };
                vErrors === null ? vErrors = [err126] : vErrors.push(err126), errors++;
              }
            }
            if (data61.on !== void 0) {
              let data64 = data61.on;
              if (typeof data64 == "string") {
                if (!pattern4.test(data64)) {
                  let err127 = { instancePath: instancePath + "/retired/" + i2 + "/on", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data64 };
                  vErrors === null ? vErrors = [err127] : vErrors.push(err127), errors++;
                }
              } else {
                let err128 = { instancePath: instancePath + "/retired/" + i2 + "/on", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data64 };
                vErrors === null ? vErrors = [err128] : vErrors.push(err128), errors++;
              }
            }
            if (data61.reason !== void 0) {
              let data65 = data61.reason;
              if (typeof data65 == "string") {
                if (!pattern28.test(data65)) {
                  let err129 = { instancePath: instancePath + "/retired/" + i2 + "/reason", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema94, data: data65 };
                  vErrors === null ? vErrors = [err129] : vErrors.push(err129), errors++;
                }
              } else {
                let err130 = { instancePath: instancePath + "/retired/" + i2 + "/reason", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema94.type, parentSchema: schema94, data: data65 };
                vErrors === null ? vErrors = [err130] : vErrors.push(err130), errors++;
              }
            }
            if (data61.backup !== void 0) {
              let data66 = data61.backup;
              if (typeof data66 == "string") {
                if (!pattern28.test(data66)) {
                  let err131 = { instancePath: instancePath + "/retired/" + i2 + "/backup", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema94, data: data66 };
                  vErrors === null ? vErrors = [err131] : vErrors.push(err131), errors++;
                }
              } else {
                let err132 = { instancePath: instancePath + "/retired/" + i2 + "/backup", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema94.type, parentSchema: schema94, data: data66 };
                vErrors === null ? vErrors = [err132] : vErrors.push(err132), errors++;
              }
            }
            if (data61["backed-up"] !== void 0) {
              let data67 = data61["backed-up"];
              if (typeof data67 == "string") {
                if (!pattern4.test(data67)) {
                  let err133 = { instancePath: instancePath + "/retired/" + i2 + "/backed-up", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data67 };
                  vErrors === null ? vErrors = [err133] : vErrors.push(err133), errors++;
                }
              } else {
                let err134 = { instancePath: instancePath + "/retired/" + i2 + "/backed-up", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data67 };
                vErrors === null ? vErrors = [err134] : vErrors.push(err134), errors++;
              }
            }
          } else {
            let err135 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema78.properties.retired.items.type, parentSchema: schema78.properties.retired.items, data: data61 };
            vErrors === null ? vErrors = [err135] : vErrors.push(err135), errors++;
          }
        }
      } else {
        let err136 = { instancePath: instancePath + "/retired", schemaPath: "#/properties/retired/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema78.properties.retired.type, parentSchema: schema78.properties.retired, data: data60 };
        vErrors === null ? vErrors = [err136] : vErrors.push(err136), errors++;
      }
    }
  } else {
    let err137 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema78.type, parentSchema: schema78, data };
    vErrors === null ? vErrors = [err137] : vErrors.push(err137), errors++;
  }
  return validate58.errors = vErrors, errors === 0;
}
validate58.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var gathered = validate66, schema124 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "gathered.json", title: "GatheredFile", description: "What the script of `ullage survey script` prints: what a server's tools said, as they said it.", type: "object", additionalProperties: !1, required: ["format", "at"], properties: { format: { type: "string", enum: ["ullage-gathered-1"], description: "The version of this format." }, at: { $ref: "survey.json#/$defs/time", description: "When it was taken." }, asked: { type: "array", items: { type: "string", enum: ["homes"] }, description: "What was asked for beside the usual: the mounts beneath /home, which are left out otherwise." }, versions: { type: "object", additionalProperties: { type: "string" }, description: "The tools that were asked, each with what it says of its version." }, lsblk: { type: "object", required: ["blockdevices"], properties: { blockdevices: { type: "array", items: { type: "object" } } }, description: "lsblk --json --bytes" }, serials: { type: "array", items: { type: "object", additionalProperties: !1, required: ["device", "serial"], properties: { device: { type: "string" }, serial: { type: "string" } } }, description: "The disks' serial numbers as the kernel has them in /sys/block, for where lsblk knows none." }, contents: { type: "array", items: { type: "object" }, description: "What lies on the devices, as blkid finds it, for where lsblk knows of none." }, findmnt: { type: "object", required: ["filesystems"], properties: { filesystems: { type: "array", items: { type: "object" } } }, description: "The mounts of block devices, as findmnt --list --json has them." }, df: { type: "string", description: "df -P" }, swaps: { type: "string", description: "The devices that are swapped to, one a line." }, pvs: { $ref: "#/$defs/report", description: "pvs --reportformat json" }, vgs: { $ref: "#/$defs/report", description: "vgs --reportformat json" }, lvs: { $ref: "#/$defs/report", description: "lvs --reportformat json" }, fstab: { type: "string", description: "The first three fields of fstab's lines that mount a block device." }, superblocks: { type: "array", items: { type: "object", additionalProperties: !1, required: ["device", "text"], properties: { device: { type: "string" }, text: { type: "string" } } }, description: "Of ext and xfs file systems: the figures that dumpe2fs -h or xfs_db prints, a line each." }, unseen: { type: "array", items: { type: "object", additionalProperties: !1, required: ["what", "why"], properties: { what: { type: "string", enum: ["devices", "mounts", "use", "volume-groups", "fstab", "superblocks"] }, why: { type: "string" } } }, description: "What could not be seen, and why." } }, $defs: { report: { title: "LvmReport", type: "object", required: ["report"], properties: { report: { type: "array", items: { type: "object" } } }, description: "A report of the volume manager, as it prints it." } } }, schema127 = { title: "SurveyTime", type: "string", pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$", description: "RFC 3339, in UTC, with whole seconds." }, schema155 = { title: "LvmReport", type: "object", required: ["report"], properties: { report: { type: "array", items: { type: "object" } } }, description: "A report of the volume manager, as it prints it." }, pattern56 = new RegExp("^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$", "u");
function validate66(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate66.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.format === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "format" }, message: "must have required property 'format'", schema: schema124.required, parentSchema: schema124, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.at === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "at" }, message: "must have required property 'at'", schema: schema124.required, parentSchema: schema124, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    for (let key0 in data)
      if (!func1.call(schema124.properties, key0)) {
        let err2 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema124, data };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    if (data.format !== void 0) {
      let data0 = data.format;
      if (typeof data0 != "string") {
        let err3 = { instancePath: instancePath + "/format", schemaPath: "#/properties/format/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.format.type, parentSchema: schema124.properties.format, data: data0 };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
      if (data0 !== "ullage-gathered-1") {
        let err4 = { instancePath: instancePath + "/format", schemaPath: "#/properties/format/enum", keyword: "enum", params: { allowedValues: schema124.properties.format.enum }, message: "must be equal to one of the allowed values", schema: schema124.properties.format.enum, parentSchema: schema124.properties.format, data: data0 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
    if (data.at !== void 0) {
      let data1 = data.at;
      if (typeof data1 == "string") {
        if (!pattern56.test(data1)) {
          let err5 = { instancePath: instancePath + "/at", schemaPath: "survey.json#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$", parentSchema: schema127, data: data1 };
          vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
        }
      } else {
        let err6 = { instancePath: instancePath + "/at", schemaPath: "survey.json#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema127.type, parentSchema: schema127, data: data1 };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    }
    if (data.asked !== void 0) {
      let data2 = data.asked;
      if (Array.isArray(data2)) {
        let len0 = data2.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data3 = data2[i0];
          if (typeof data3 != "string") {
            let err7 = { instancePath: instancePath + "/asked/" + i0, schemaPath: "#/properties/asked/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.asked.items.type, parentSchema: schema124.properties.asked.items, data: data3 };
            vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
          }
          if (data3 !== "homes") {
            let err8 = { instancePath: instancePath + "/asked/" + i0, schemaPath: "#/properties/asked/items/enum", keyword: "enum", params: { allowedValues: schema124.properties.asked.items.enum }, message: "must be equal to one of the allowed values", schema: schema124.properties.asked.items.enum, parentSchema: schema124.properties.asked.items, data: data3 };
            vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
          }
        }
      } else {
        let err9 = { instancePath: instancePath + "/asked", schemaPath: "#/properties/asked/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema124.properties.asked.type, parentSchema: schema124.properties.asked, data: data2 };
        vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
      }
    }
    if (data.versions !== void 0) {
      let data4 = data.versions;
      if (data4 && typeof data4 == "object" && !Array.isArray(data4))
        for (let key1 in data4) {
          let data5 = data4[key1];
          if (typeof data5 != "string") {
            let err10 = { instancePath: instancePath + "/versions/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/versions/additionalProperties/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.versions.additionalProperties.type, parentSchema: schema124.properties.versions.additionalProperties, data: data5 };
            vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
          }
        }
      else {
        let err11 = { instancePath: instancePath + "/versions", schemaPath: "#/properties/versions/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema124.properties.versions.type, parentSchema: schema124.properties.versions, data: data4 };
        vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
      }
    }
    if (data.lsblk !== void 0) {
      let data6 = data.lsblk;
      if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
        if (data6.blockdevices === void 0) {
          let err12 = { instancePath: instancePath + "/lsblk", schemaPath: "#/properties/lsblk/required", keyword: "required", params: { missingProperty: "blockdevices" }, message: "must have required property 'blockdevices'", schema: schema124.properties.lsblk.required, parentSchema: schema124.properties.lsblk, data: data6 };
          vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
        }
        if (data6.blockdevices !== void 0) {
          let data7 = data6.blockdevices;
          if (Array.isArray(data7)) {
            let len1 = data7.length;
            for (let i1 = 0; i1 < len1; i1++) {
              let data8 = data7[i1];
              if (!(data8 && typeof data8 == "object" && !Array.isArray(data8))) {
                let err13 = { instancePath: instancePath + "/lsblk/blockdevices/" + i1, schemaPath: "#/properties/lsblk/properties/blockdevices/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema124.properties.lsblk.properties.blockdevices.items.type, parentSchema: schema124.properties.lsblk.properties.blockdevices.items, data: data8 };
                vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
              }
            }
          } else {
            let err14 = { instancePath: instancePath + "/lsblk/blockdevices", schemaPath: "#/properties/lsblk/properties/blockdevices/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema124.properties.lsblk.properties.blockdevices.type, parentSchema: schema124.properties.lsblk.properties.blockdevices, data: data7 };
            vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
          }
        }
      } else {
        let err15 = { instancePath: instancePath + "/lsblk", schemaPath: "#/properties/lsblk/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema124.properties.lsblk.type, parentSchema: schema124.properties.lsblk, data: data6 };
        vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
      }
    }
    if (data.serials !== void 0) {
      let data9 = data.serials;
      if (Array.isArray(data9)) {
        let len2 = data9.length;
        for (let i2 = 0; i2 < len2; i2++) {
          let data10 = data9[i2];
          if (data10 && typeof data10 == "object" && !Array.isArray(data10)) {
            if (data10.device === void 0) {
              let err16 = { instancePath: instancePath + "/serials/" + i2, schemaPath: "#/properties/serials/items/required", keyword: "required", params: { missingProperty: "device" }, message: "must have required property 'device'", schema: schema124.properties.serials.items.required, parentSchema: schema124.properties.serials.items, data: data10 };
              vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
            }
            if (data10.serial === void 0) {
              let err17 = { instancePath: instancePath + "/serials/" + i2, schemaPath: "#/properties/serials/items/required", keyword: "required", params: { missingProperty: "serial" }, message: "must have required property 'serial'", schema: schema124.properties.serials.items.required, parentSchema: schema124.properties.serials.items, data: data10 };
              vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
            }
            for (let key2 in data10)
              if (!(key2 === "device" || key2 === "serial")) {
                let err18 = { instancePath: instancePath + "/serials/" + i2, schemaPath: "#/properties/serials/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema124.properties.serials.items, data: data10 };
                vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
              }
            if (data10.device !== void 0) {
              let data11 = data10.device;
              if (typeof data11 != "string") {
                let err19 = { instancePath: instancePath + "/serials/" + i2 + "/device", schemaPath: "#/properties/serials/items/properties/device/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.serials.items.properties.device.type, parentSchema: schema124.properties.serials.items.properties.device, data: data11 };
                vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
              }
            }
            if (data10.serial !== void 0) {
              let data12 = data10.serial;
              if (typeof data12 != "string") {
                let err20 = { instancePath: instancePath + "/serials/" + i2 + "/serial", schemaPath: "#/properties/serials/items/properties/serial/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.serials.items.properties.serial.type, parentSchema: schema124.properties.serials.items.properties.serial, data: data12 };
                vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
              }
            }
          } else {
            let err21 = { instancePath: instancePath + "/serials/" + i2, schemaPath: "#/properties/serials/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema124.properties.serials.items.type, parentSchema: schema124.properties.serials.items, data: data10 };
            vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
          }
        }
      } else {
        let err22 = { instancePath: instancePath + "/serials", schemaPath: "#/properties/serials/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema124.properties.serials.type, parentSchema: schema124.properties.serials, data: data9 };
        vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
      }
    }
    if (data.contents !== void 0) {
      let data13 = data.contents;
      if (Array.isArray(data13)) {
        let len3 = data13.length;
        for (let i3 = 0; i3 < len3; i3++) {
          let data14 = data13[i3];
          if (!(data14 && typeof data14 == "object" && !Array.isArray(data14))) {
            let err23 = { instancePath: instancePath + "/contents/" + i3, schemaPath: "#/properties/contents/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema124.properties.contents.items.type, parentSchema: schema124.properties.contents.items, data: data14 };
            vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
          }
        }
      } else {
        let err24 = { instancePath: instancePath + "/contents", schemaPath: "#/properties/contents/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema124.properties.contents.type, parentSchema: schema124.properties.contents, data: data13 };
        vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
      }
    }
    if (data.findmnt !== void 0) {
      let data15 = data.findmnt;
      if (data15 && typeof data15 == "object" && !Array.isArray(data15)) {
        if (data15.filesystems === void 0) {
          let err25 = { instancePath: instancePath + "/findmnt", schemaPath: "#/properties/findmnt/required", keyword: "required", params: { missingProperty: "filesystems" }, message: "must have required property 'filesystems'", schema: schema124.properties.findmnt.required, parentSchema: schema124.properties.findmnt, data: data15 };
          vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
        }
        if (data15.filesystems !== void 0) {
          let data16 = data15.filesystems;
          if (Array.isArray(data16)) {
            let len4 = data16.length;
            for (let i4 = 0; i4 < len4; i4++) {
              let data17 = data16[i4];
              if (!(data17 && typeof data17 == "object" && !Array.isArray(data17))) {
                let err26 = { instancePath: instancePath + "/findmnt/filesystems/" + i4, schemaPath: "#/properties/findmnt/properties/filesystems/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema124.properties.findmnt.properties.filesystems.items.type, parentSchema: schema124.properties.findmnt.properties.filesystems.items, data: data17 };
                vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
              }
            }
          } else {
            let err27 = { instancePath: instancePath + "/findmnt/filesystems", schemaPath: "#/properties/findmnt/properties/filesystems/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema124.properties.findmnt.properties.filesystems.type, parentSchema: schema124.properties.findmnt.properties.filesystems, data: data16 };
            vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
          }
        }
      } else {
        let err28 = { instancePath: instancePath + "/findmnt", schemaPath: "#/properties/findmnt/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema124.properties.findmnt.type, parentSchema: schema124.properties.findmnt, data: data15 };
        vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
      }
    }
    if (data.df !== void 0) {
      let data18 = data.df;
      if (typeof data18 != "string") {
        let err29 = { instancePath: instancePath + "/df", schemaPath: "#/properties/df/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.df.type, parentSchema: schema124.properties.df, data: data18 };
        vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
      }
    }
    if (data.swaps !== void 0) {
      let data19 = data.swaps;
      if (typeof data19 != "string") {
        let err30 = { instancePath: instancePath + "/swaps", schemaPath: "#/properties/swaps/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.swaps.type, parentSchema: schema124.properties.swaps, data: data19 };
        vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
      }
    }
    if (data.pvs !== void 0) {
      let data20 = data.pvs;
      if (data20 && typeof data20 == "object" && !Array.isArray(data20)) {
        if (data20.report === void 0) {
          let err31 = { instancePath: instancePath + "/pvs", schemaPath: "#/$defs/report/required", keyword: "required", params: { missingProperty: "report" }, message: "must have required property 'report'", schema: schema155.required, parentSchema: schema155, data: data20 };
          vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
        }
        if (data20.report !== void 0) {
          let data21 = data20.report;
          if (Array.isArray(data21)) {
            let len5 = data21.length;
            for (let i5 = 0; i5 < len5; i5++) {
              let data22 = data21[i5];
              if (!(data22 && typeof data22 == "object" && !Array.isArray(data22))) {
                let err32 = { instancePath: instancePath + "/pvs/report/" + i5, schemaPath: "#/$defs/report/properties/report/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema155.properties.report.items.type, parentSchema: schema155.properties.report.items, data: data22 };
                vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
              }
            }
          } else {
            let err33 = { instancePath: instancePath + "/pvs/report", schemaPath: "#/$defs/report/properties/report/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema155.properties.report.type, parentSchema: schema155.properties.report, data: data21 };
            vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
          }
        }
      } else {
        let err34 = { instancePath: instancePath + "/pvs", schemaPath: "#/$defs/report/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema155.type, parentSchema: schema155, data: data20 };
        vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
      }
    }
    if (data.vgs !== void 0) {
      let data23 = data.vgs;
      if (data23 && typeof data23 == "object" && !Array.isArray(data23)) {
        if (data23.report === void 0) {
          let err35 = { instancePath: instancePath + "/vgs", schemaPath: "#/$defs/report/required", keyword: "required", params: { missingProperty: "report" }, message: "must have required property 'report'", schema: schema155.required, parentSchema: schema155, data: data23 };
          vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
        }
        if (data23.report !== void 0) {
          let data24 = data23.report;
          if (Array.isArray(data24)) {
            let len6 = data24.length;
            for (let i6 = 0; i6 < len6; i6++) {
              let data25 = data24[i6];
              if (!(data25 && typeof data25 == "object" && !Array.isArray(data25))) {
                let err36 = { instancePath: instancePath + "/vgs/report/" + i6, schemaPath: "#/$defs/report/properties/report/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema155.properties.report.items.type, parentSchema: schema155.properties.report.items, data: data25 };
                vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
              }
            }
          } else {
            let err37 = { instancePath: instancePath + "/vgs/report", schemaPath: "#/$defs/report/properties/report/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema155.properties.report.type, parentSchema: schema155.properties.report, data: data24 };
            vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
          }
        }
      } else {
        let err38 = { instancePath: instancePath + "/vgs", schemaPath: "#/$defs/report/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema155.type, parentSchema: schema155, data: data23 };
        vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
      }
    }
    if (data.lvs !== void 0) {
      let data26 = data.lvs;
      if (data26 && typeof data26 == "object" && !Array.isArray(data26)) {
        if (data26.report === void 0) {
          let err39 = { instancePath: instancePath + "/lvs", schemaPath: "#/$defs/report/required", keyword: "required", params: { missingProperty: "report" }, message: "must have required property 'report'", schema: schema155.required, parentSchema: schema155, data: data26 };
          vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
        }
        if (data26.report !== void 0) {
          let data27 = data26.report;
          if (Array.isArray(data27)) {
            let len7 = data27.length;
            for (let i7 = 0; i7 < len7; i7++) {
              let data28 = data27[i7];
              if (!(data28 && typeof data28 == "object" && !Array.isArray(data28))) {
                let err40 = { instancePath: instancePath + "/lvs/report/" + i7, schemaPath: "#/$defs/report/properties/report/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema155.properties.report.items.type, parentSchema: schema155.properties.report.items, data: data28 };
                vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
              }
            }
          } else {
            let err41 = { instancePath: instancePath + "/lvs/report", schemaPath: "#/$defs/report/properties/report/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema155.properties.report.type, parentSchema: schema155.properties.report, data: data27 };
            vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
          }
        }
      } else {
        let err42 = { instancePath: instancePath + "/lvs", schemaPath: "#/$defs/report/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema155.type, parentSchema: schema155, data: data26 };
        vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
      }
    }
    if (data.fstab !== void 0) {
      let data29 = data.fstab;
      if (typeof data29 != "string") {
        let err43 = { instancePath: instancePath + "/fstab", schemaPath: "#/properties/fstab/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.fstab.type, parentSchema: schema124.properties.fstab, data: data29 };
        vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
      }
    }
    if (data.superblocks !== void 0) {
      let data30 = data.superblocks;
      if (Array.isArray(data30)) {
        let len8 = data30.length;
        for (let i8 = 0; i8 < len8; i8++) {
          let data31 = data30[i8];
          if (data31 && typeof data31 == "object" && !Array.isArray(data31)) {
            if (data31.device === void 0) {
              let err44 = { instancePath: instancePath + "/superblocks/" + i8, schemaPath: "#/properties/superblocks/items/required", keyword: "required", params: { missingProperty: "device" }, message: "must have required property 'device'", schema: schema124.properties.superblocks.items.required, parentSchema: schema124.properties.superblocks.items, data: data31 };
              vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
            }
            if (data31.text === void 0) {
              let err45 = { instancePath: instancePath + "/superblocks/" + i8, schemaPath: "#/properties/superblocks/items/required", keyword: "required", params: { missingProperty: "text" }, message: "must have required property 'text'", schema: schema124.properties.superblocks.items.required, parentSchema: schema124.properties.superblocks.items, data: data31 };
              vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
            }
            for (let key3 in data31)
              if (!(key3 === "device" || key3 === "text")) {
                let err46 = { instancePath: instancePath + "/superblocks/" + i8, schemaPath: "#/properties/superblocks/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema124.properties.superblocks.items, data: data31 };
                vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
              }
            if (data31.device !== void 0) {
              let data32 = data31.device;
              if (typeof data32 != "string") {
                let err47 = { instancePath: instancePath + "/superblocks/" + i8 + "/device", schemaPath: "#/properties/superblocks/items/properties/device/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.superblocks.items.properties.device.type, parentSchema: schema124.properties.superblocks.items.properties.device, data: data32 };
                vErrors === null ? vErrors = [err47] : vErrors.push(err47), errors++;
              }
            }
            if (data31.text !== void 0) {
              let data33 = data31.text;
              if (typeof data33 != "string") {
                let err48 = { instancePath: instancePath + "/superblocks/" + i8 + "/text", schemaPath: "#/properties/superblocks/items/properties/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.superblocks.items.properties.text.type, parentSchema: schema124.properties.superblocks.items.properties.text, data: data33 };
                vErrors === null ? vErrors = [err48] : vErrors.push(err48), errors++;
              }
            }
          } else {
            let err49 = { instancePath: instancePath + "/superblocks/" + i8, schemaPath: "#/properties/superblocks/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema124.properties.superblocks.items.type, parentSchema: schema124.properties.superblocks.items, data: data31 };
            vErrors === null ? vErrors = [err49] : vErrors.push(err49), errors++;
          }
        }
      } else {
        let err50 = { instancePath: instancePath + "/superblocks", schemaPath: "#/properties/superblocks/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema124.properties.superblocks.type, parentSchema: schema124.properties.superblocks, data: data30 };
        vErrors === null ? vErrors = [err50] : vErrors.push(err50), errors++;
      }
    }
    if (data.unseen !== void 0) {
      let data34 = data.unseen;
      if (Array.isArray(data34)) {
        let len9 = data34.length;
        for (let i9 = 0; i9 < len9; i9++) {
          let data35 = data34[i9];
          if (data35 && typeof data35 == "object" && !Array.isArray(data35)) {
            if (data35.what === void 0) {
              let err51 = { instancePath: instancePath + "/unseen/" + i9, schemaPath: "#/properties/unseen/items/required", keyword: "required", params: { missingProperty: "what" }, message: "must have required property 'what'", schema: schema124.properties.unseen.items.required, parentSchema: schema124.properties.unseen.items, data: data35 };
              vErrors === null ? vErrors = [err51] : vErrors.push(err51), errors++;
            }
            if (data35.why === void 0) {
              let err52 = { instancePath: instancePath + "/unseen/" + i9, schemaPath: "#/properties/unseen/items/required", keyword: "required", params: { missingProperty: "why" }, message: "must have required property 'why'", schema: schema124.properties.unseen.items.required, parentSchema: schema124.properties.unseen.items, data: data35 };
              vErrors === null ? vErrors = [err52] : vErrors.push(err52), errors++;
            }
            for (let key4 in data35)
              if (!(key4 === "what" || key4 === "why")) {
                let err53 = { instancePath: instancePath + "/unseen/" + i9, schemaPath: "#/properties/unseen/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key4 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema124.properties.unseen.items, data: data35 };
                vErrors === null ? vErrors = [err53] : vErrors.push(err53), errors++;
              }
            if (data35.what !== void 0) {
              let data36 = data35.what;
              if (typeof data36 != "string") {
                let err54 = { instancePath: instancePath + "/unseen/" + i9 + "/what", schemaPath: "#/properties/unseen/items/properties/what/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.unseen.items.properties.what.type, parentSchema: schema124.properties.unseen.items.properties.what, data: data36 };
                vErrors === null ? vErrors = [err54] : vErrors.push(err54), errors++;
              }
              if (!(data36 === "devices" || data36 === "mounts" || data36 === "use" || data36 === "volume-groups" || data36 === "fstab" || data36 === "superblocks")) {
                let err55 = { instancePath: instancePath + "/unseen/" + i9 + "/what", schemaPath: "#/properties/unseen/items/properties/what/enum", keyword: "enum", params: { allowedValues: schema124.properties.unseen.items.properties.what.enum }, message: "must be equal to one of the allowed values", schema: schema124.properties.unseen.items.properties.what.enum, parentSchema: schema124.properties.unseen.items.properties.what, data: data36 };
                vErrors === null ? vErrors = [err55] : vErrors.push(err55), errors++;
              }
            }
            if (data35.why !== void 0) {
              let data37 = data35.why;
              if (typeof data37 != "string") {
                let err56 = { instancePath: instancePath + "/unseen/" + i9 + "/why", schemaPath: "#/properties/unseen/items/properties/why/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema124.properties.unseen.items.properties.why.type, parentSchema: schema124.properties.unseen.items.properties.why, data: data37 };
                vErrors === null ? vErrors = [err56] : vErrors.push(err56), errors++;
              }
            }
          } else {
            let err57 = { instancePath: instancePath + "/unseen/" + i9, schemaPath: "#/properties/unseen/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema124.properties.unseen.items.type, parentSchema: schema124.properties.unseen.items, data: data35 };
            vErrors === null ? vErrors = [err57] : vErrors.push(err57), errors++;
          }
        }
      } else {
        let err58 = { instancePath: instancePath + "/unseen", schemaPath: "#/properties/unseen/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema124.properties.unseen.type, parentSchema: schema124.properties.unseen, data: data34 };
        vErrors === null ? vErrors = [err58] : vErrors.push(err58), errors++;
      }
    }
  } else {
    let err59 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema124.type, parentSchema: schema124, data };
    vErrors === null ? vErrors = [err59] : vErrors.push(err59), errors++;
  }
  return validate66.errors = vErrors, errors === 0;
}
validate66.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var price_list = validate74, schema158 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "price-list.json", title: "PriceListFile", description: "A price list: what each tier and each server type costs, from a date on. The newest list that has begun applies, and no older one.", type: "object", additionalProperties: !1, required: ["from", "currency"], properties: { from: { $ref: "common.json#/$defs/date", description: "The first day on which this list applies." }, currency: { $ref: "common.json#/$defs/currency", description: "The currency of every amount in the list (ISO 4217)." }, tiers: { type: "object", propertyNames: { $ref: "common.json#/$defs/name", examples: ["bulk"] }, description: "The tiers, by name.", additionalProperties: { title: "TierDeclaration", type: "object", additionalProperties: !1, required: ["per"], oneOf: [{ required: ["rate"] }, { required: ["bands"] }], description: "One tier: its price and its bounds.", properties: { rate: { $ref: "common.json#/$defs/amount", description: "The price of one unit of capacity for a month.", examples: ["0.045"] }, bands: { type: "array", minItems: 1, description: "Graduated prices: each band's rate applies to the capacity inside it. Only the last band may be without up-to.", items: { title: "BandDeclaration", type: "object", additionalProperties: !1, required: ["rate"], description: "One band of capacity.", properties: { "up-to": { $ref: "common.json#/$defs/size", description: "Where the band ends, counted from zero." }, rate: { $ref: "common.json#/$defs/amount", description: "The price of one unit inside the band for a month.", examples: ["0.22"] } } } }, per: { type: "string", enum: ["GiB-month", "GB-month"], description: "The unit of capacity that the rate is for." }, flat: { $ref: "common.json#/$defs/amount", description: "A fixed monthly fee for each volume, in addition." }, "minimum-billed": { $ref: "common.json#/$defs/size", description: "A smaller volume is billed as if it had this size." }, minimum: { $ref: "common.json#/$defs/size", description: "The smallest volume the tier offers." }, maximum: { $ref: "common.json#/$defs/size", description: "The largest volume the tier offers." }, step: { $ref: "common.json#/$defs/size", description: "Sizes are whole multiples of this." }, "iops-per-gib": { type: "number", minimum: 0, description: "The IOPS that each GiB provides." }, "iops-maximum": { type: "integer", minimum: 0, description: "The most IOPS that one volume provides." }, "servers-a-volume": { type: "integer", minimum: 1, description: "To how many servers one shareable volume of this tier may be attached at once." } } } }, "server-types": { type: "object", propertyNames: { $ref: "common.json#/$defs/name", examples: ["small"] }, description: "The types that servers are billed as, by name.", additionalProperties: { title: "MachineDeclaration", type: "object", additionalProperties: !1, required: ["running"], description: "The price of one server type by the hour.", properties: { running: { $ref: "common.json#/$defs/amount", description: "The price of an hour while the server runs.", examples: ["0.031"] }, stopped: { $ref: "common.json#/$defs/amount", default: "0", description: "The price of an hour while it is stopped." } } } } } }, schema160 = { title: "Currency", type: "string", pattern: "^[A-Z]{3}$", description: "An ISO 4217 currency code, such as EUR.", examples: ["EUR"] }, schema162 = { title: "Amount", type: "string", pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", description: 'An amount of money as a decimal in quotes, such as "120.00", so that nothing rounds it.', examples: ["120.00", "0.045"] }, pattern87 = new RegExp("^[A-Z]{3}$", "u"), pattern89 = new RegExp("^[0-9]{1,15}(\\.[0-9]{1,15})?$", "u");
function validate74(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate74.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.from === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "from" }, message: "must have required property 'from'", schema: schema158.required, parentSchema: schema158, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.currency === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "currency" }, message: "must have required property 'currency'", schema: schema158.required, parentSchema: schema158, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "from" || key0 === "currency" || key0 === "tiers" || key0 === "server-types")) {
        let err2 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema158, data };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    if (data.from !== void 0) {
      let data0 = data.from;
      if (typeof data0 == "string") {
        if (!pattern4.test(data0)) {
          let err3 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data0 };
          vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
        }
      } else {
        let err4 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data0 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
    if (data.currency !== void 0) {
      let data1 = data.currency;
      if (typeof data1 == "string") {
        if (!pattern87.test(data1)) {
          let err5 = { instancePath: instancePath + "/currency", schemaPath: "common.json#/$defs/currency/pattern", keyword: "pattern", params: { pattern: "^[A-Z]{3}$" }, message: 'must match pattern "^[A-Z]{3}$"', schema: "^[A-Z]{3}$", parentSchema: schema160, data: data1 };
          vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
        }
      } else {
        let err6 = { instancePath: instancePath + "/currency", schemaPath: "common.json#/$defs/currency/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema160.type, parentSchema: schema160, data: data1 };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    }
    if (data.tiers !== void 0) {
      let data2 = data.tiers;
      if (data2 && typeof data2 == "object" && !Array.isArray(data2)) {
        for (let key1 in data2) {
          let _errs10 = errors;
          if (typeof key1 == "string") {
            if (!pattern13.test(key1)) {
              let err7 = { instancePath: instancePath + "/tiers", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: key1, propertyName: key1 };
              vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
            }
          } else {
            let err8 = { instancePath: instancePath + "/tiers", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: key1, propertyName: key1 };
            vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
          }
          var valid3 = _errs10 === errors;
          if (!valid3) {
            let err9 = { instancePath: instancePath + "/tiers", schemaPath: "#/properties/tiers/propertyNames", keyword: "propertyNames", params: { propertyName: key1 }, message: "property name must be valid", schema: schema158.properties.tiers.propertyNames, parentSchema: schema158.properties.tiers, data: data2 };
            vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
          }
        }
        for (let key2 in data2) {
          let data3 = data2[key2], _errs16 = errors, valid6 = !1, passing0 = null, _errs17 = errors;
          if (data3 && typeof data3 == "object" && !Array.isArray(data3) && data3.rate === void 0) {
            let err10 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/oneOf/0/required", keyword: "required", params: { missingProperty: "rate" }, message: "must have required property 'rate'", schema: schema158.properties.tiers.additionalProperties.oneOf[0].required, parentSchema: schema158.properties.tiers.additionalProperties.oneOf[0], data: data3 };
            vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
          }
          var _valid0 = _errs17 === errors;
          _valid0 && (valid6 = !0, passing0 = 0);
          let _errs18 = errors;
          if (data3 && typeof data3 == "object" && !Array.isArray(data3) && data3.bands === void 0) {
            let err11 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/oneOf/1/required", keyword: "required", params: { missingProperty: "bands" }, message: "must have required property 'bands'", schema: schema158.properties.tiers.additionalProperties.oneOf[1].required, parentSchema: schema158.properties.tiers.additionalProperties.oneOf[1], data: data3 };
            vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
          }
          var _valid0 = _errs18 === errors;
          if (_valid0 && valid6 ? (valid6 = !1, passing0 = [passing0, 1]) : _valid0 && (valid6 = !0, passing0 = 1), valid6)
            errors = _errs16, vErrors !== null && (_errs16 ? vErrors.length = _errs16 : vErrors = null);
          else {
            let err12 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/oneOf", keyword: "oneOf", params: { passingSchemas: passing0 }, message: "must match exactly one schema in oneOf", schema: schema158.properties.tiers.additionalProperties.oneOf, parentSchema: schema158.properties.tiers.additionalProperties, data: data3 };
            vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
          }
          if (data3 && typeof data3 == "object" && !Array.isArray(data3)) {
            if (data3.per === void 0) {
              let err13 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/required", keyword: "required", params: { missingProperty: "per" }, message: "must have required property 'per'", schema: schema158.properties.tiers.additionalProperties.required, parentSchema: schema158.properties.tiers.additionalProperties, data: data3 };
              vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
            }
            for (let key3 in data3)
              if (!func1.call(schema158.properties.tiers.additionalProperties.properties, key3)) {
                let err14 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema158.properties.tiers.additionalProperties, data: data3 };
                vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
              }
            if (data3.rate !== void 0) {
              let data4 = data3.rate;
              if (typeof data4 == "string") {
                if (!pattern89.test(data4)) {
                  let err15 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/rate", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema162, data: data4 };
                  vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
                }
              } else {
                let err16 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/rate", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema162.type, parentSchema: schema162, data: data4 };
                vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
              }
            }
            if (data3.bands !== void 0) {
              let data5 = data3.bands;
              if (Array.isArray(data5)) {
                if (data5.length < 1) {
                  let err17 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands", schemaPath: "#/properties/tiers/additionalProperties/properties/bands/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema158.properties.tiers.additionalProperties.properties.bands, data: data5 };
                  vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
                }
                let len0 = data5.length;
                for (let i0 = 0; i0 < len0; i0++) {
                  let data6 = data5[i0];
                  if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
                    if (data6.rate === void 0) {
                      let err18 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0, schemaPath: "#/properties/tiers/additionalProperties/properties/bands/items/required", keyword: "required", params: { missingProperty: "rate" }, message: "must have required property 'rate'", schema: schema158.properties.tiers.additionalProperties.properties.bands.items.required, parentSchema: schema158.properties.tiers.additionalProperties.properties.bands.items, data: data6 };
                      vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
                    }
                    for (let key4 in data6)
                      if (!(key4 === "up-to" || key4 === "rate")) {
                        let err19 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0, schemaPath: "#/properties/tiers/additionalProperties/properties/bands/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key4 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema158.properties.tiers.additionalProperties.properties.bands.items, data: data6 };
                        vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
                      }
                    if (data6["up-to"] !== void 0) {
                      let data7 = data6["up-to"];
                      if (typeof data7 == "string") {
                        if (!pattern26.test(data7)) {
                          let err20 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0 + "/up-to", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data7 };
                          vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
                        }
                      } else {
                        let err21 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0 + "/up-to", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data7 };
                        vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
                      }
                    }
                    if (data6.rate !== void 0) {
                      let data8 = data6.rate;
                      if (typeof data8 == "string") {
                        if (!pattern89.test(data8)) {
                          let err22 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0 + "/rate", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema162, data: data8 };
                          vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
                        }
                      } else {
                        let err23 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0 + "/rate", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema162.type, parentSchema: schema162, data: data8 };
                        vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
                      }
                    }
                  } else {
                    let err24 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0, schemaPath: "#/properties/tiers/additionalProperties/properties/bands/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema158.properties.tiers.additionalProperties.properties.bands.items.type, parentSchema: schema158.properties.tiers.additionalProperties.properties.bands.items, data: data6 };
                    vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
                  }
                }
              } else {
                let err25 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands", schemaPath: "#/properties/tiers/additionalProperties/properties/bands/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema158.properties.tiers.additionalProperties.properties.bands.type, parentSchema: schema158.properties.tiers.additionalProperties.properties.bands, data: data5 };
                vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
              }
            }
            if (data3.per !== void 0) {
              let data9 = data3.per;
              if (typeof data9 != "string") {
                let err26 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/per", schemaPath: "#/properties/tiers/additionalProperties/properties/per/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema158.properties.tiers.additionalProperties.properties.per.type, parentSchema: schema158.properties.tiers.additionalProperties.properties.per, data: data9 };
                vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
              }
              if (!(data9 === "GiB-month" || data9 === "GB-month")) {
                let err27 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/per", schemaPath: "#/properties/tiers/additionalProperties/properties/per/enum", keyword: "enum", params: { allowedValues: schema158.properties.tiers.additionalProperties.properties.per.enum }, message: "must be equal to one of the allowed values", schema: schema158.properties.tiers.additionalProperties.properties.per.enum, parentSchema: schema158.properties.tiers.additionalProperties.properties.per, data: data9 };
                vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
              }
            }
            if (data3.flat !== void 0) {
              let data10 = data3.flat;
              if (typeof data10 == "string") {
                if (!pattern89.test(data10)) {
                  let err28 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/flat", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema162, data: data10 };
                  vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
                }
              } else {
                let err29 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/flat", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema162.type, parentSchema: schema162, data: data10 };
                vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
              }
            }
            if (data3["minimum-billed"] !== void 0) {
              let data11 = data3["minimum-billed"];
              if (typeof data11 == "string") {
                if (!pattern26.test(data11)) {
                  let err30 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/minimum-billed", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data11 };
                  vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
                }
              } else {
                let err31 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/minimum-billed", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data11 };
                vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
              }
            }
            if (data3.minimum !== void 0) {
              let data12 = data3.minimum;
              if (typeof data12 == "string") {
                if (!pattern26.test(data12)) {
                  let err32 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/minimum", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data12 };
                  vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
                }
              } else {
                let err33 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/minimum", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data12 };
                vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
              }
            }
            if (data3.maximum !== void 0) {
              let data13 = data3.maximum;
              if (typeof data13 == "string") {
                if (!pattern26.test(data13)) {
                  let err34 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/maximum", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data13 };
                  vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
                }
              } else {
                let err35 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/maximum", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data13 };
                vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
              }
            }
            if (data3.step !== void 0) {
              let data14 = data3.step;
              if (typeof data14 == "string") {
                if (!pattern26.test(data14)) {
                  let err36 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/step", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data14 };
                  vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
                }
              } else {
                let err37 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/step", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data14 };
                vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
              }
            }
            if (data3["iops-per-gib"] !== void 0) {
              let data15 = data3["iops-per-gib"];
              if (typeof data15 == "number" && isFinite(data15)) {
                if (data15 < 0 || isNaN(data15)) {
                  let err38 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/iops-per-gib", schemaPath: "#/properties/tiers/additionalProperties/properties/iops-per-gib/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema158.properties.tiers.additionalProperties.properties["iops-per-gib"], data: data15 };
                  vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
                }
              } else {
                let err39 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/iops-per-gib", schemaPath: "#/properties/tiers/additionalProperties/properties/iops-per-gib/type", keyword: "type", params: { type: "number" }, message: "must be number", schema: schema158.properties.tiers.additionalProperties.properties["iops-per-gib"].type, parentSchema: schema158.properties.tiers.additionalProperties.properties["iops-per-gib"], data: data15 };
                vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
              }
            }
            if (data3["iops-maximum"] !== void 0) {
              let data16 = data3["iops-maximum"];
              if (!(typeof data16 == "number" && !(data16 % 1) && !isNaN(data16) && isFinite(data16))) {
                let err40 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/iops-maximum", schemaPath: "#/properties/tiers/additionalProperties/properties/iops-maximum/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema158.properties.tiers.additionalProperties.properties["iops-maximum"].type, parentSchema: schema158.properties.tiers.additionalProperties.properties["iops-maximum"], data: data16 };
                vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
              }
              if (typeof data16 == "number" && isFinite(data16) && (data16 < 0 || isNaN(data16))) {
                let err41 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/iops-maximum", schemaPath: "#/properties/tiers/additionalProperties/properties/iops-maximum/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema158.properties.tiers.additionalProperties.properties["iops-maximum"], data: data16 };
                vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
              }
            }
            if (data3["servers-a-volume"] !== void 0) {
              let data17 = data3["servers-a-volume"];
              if (!(typeof data17 == "number" && !(data17 % 1) && !isNaN(data17) && isFinite(data17))) {
                let err42 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/servers-a-volume", schemaPath: "#/properties/tiers/additionalProperties/properties/servers-a-volume/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema158.properties.tiers.additionalProperties.properties["servers-a-volume"].type, parentSchema: schema158.properties.tiers.additionalProperties.properties["servers-a-volume"], data: data17 };
                vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
              }
              if (typeof data17 == "number" && isFinite(data17) && (data17 < 1 || isNaN(data17))) {
                let err43 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/servers-a-volume", schemaPath: "#/properties/tiers/additionalProperties/properties/servers-a-volume/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1", schema: 1, parentSchema: schema158.properties.tiers.additionalProperties.properties["servers-a-volume"], data: data17 };
                vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
              }
            }
          } else {
            let err44 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema158.properties.tiers.additionalProperties.type, parentSchema: schema158.properties.tiers.additionalProperties, data: data3 };
            vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
          }
        }
      } else {
        let err45 = { instancePath: instancePath + "/tiers", schemaPath: "#/properties/tiers/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema158.properties.tiers.type, parentSchema: schema158.properties.tiers, data: data2 };
        vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
      }
    }
    if (data["server-types"] !== void 0) {
      let data18 = data["server-types"];
      if (data18 && typeof data18 == "object" && !Array.isArray(data18)) {
        for (let key5 in data18) {
          let _errs59 = errors;
          if (typeof key5 == "string") {
            if (!pattern13.test(key5)) {
              let err46 = { instancePath: instancePath + "/server-types", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: key5, propertyName: key5 };
              vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
            }
          } else {
            let err47 = { instancePath: instancePath + "/server-types", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: key5, propertyName: key5 };
            vErrors === null ? vErrors = [err47] : vErrors.push(err47), errors++;
          }
          var valid19 = _errs59 === errors;
          if (!valid19) {
            let err48 = { instancePath: instancePath + "/server-types", schemaPath: "#/properties/server-types/propertyNames", keyword: "propertyNames", params: { propertyName: key5 }, message: "property name must be valid", schema: schema158.properties["server-types"].propertyNames, parentSchema: schema158.properties["server-types"], data: data18 };
            vErrors === null ? vErrors = [err48] : vErrors.push(err48), errors++;
          }
        }
        for (let key6 in data18) {
          let data19 = data18[key6];
          if (data19 && typeof data19 == "object" && !Array.isArray(data19)) {
            if (data19.running === void 0) {
              let err49 = { instancePath: instancePath + "/server-types/" + key6.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/server-types/additionalProperties/required", keyword: "required", params: { missingProperty: "running" }, message: "must have required property 'running'", schema: schema158.properties["server-types"].additionalProperties.required, parentSchema: schema158.properties["server-types"].additionalProperties, data: data19 };
              vErrors === null ? vErrors = [err49] : vErrors.push(err49), errors++;
            }
            for (let key7 in data19)
              if (!(key7 === "running" || key7 === "stopped")) {
                let err50 = { instancePath: instancePath + "/server-types/" + key6.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/server-types/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key7 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema158.properties["server-types"].additionalProperties, data: data19 };
                vErrors === null ? vErrors = [err50] : vErrors.push(err50), errors++;
              }
            if (data19.running !== void 0) {
              let data20 = data19.running;
              if (typeof data20 == "string") {
                if (!pattern89.test(data20)) {
                  let err51 = { instancePath: instancePath + "/server-types/" + key6.replace(/~/g, "~0").replace(/\//g, "~1") + "/running", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema162, data: data20 };
                  vErrors === null ? vErrors = [err51] : vErrors.push(err51), errors++;
                }
              } else {
                let err52 = { instancePath: instancePath + "/server-types/" + key6.replace(/~/g, "~0").replace(/\//g, "~1") + "/running", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema162.type, parentSchema: schema162, data: data20 };
                vErrors === null ? vErrors = [err52] : vErrors.push(err52), errors++;
              }
            }
            if (data19.stopped !== void 0) {
              let data21 = data19.stopped;
              if (typeof data21 == "string") {
                if (!pattern89.test(data21)) {
                  let err53 = { instancePath: instancePath + "/server-types/" + key6.replace(/~/g, "~0").replace(/\//g, "~1") + "/stopped", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema162, data: data21 };
                  vErrors === null ? vErrors = [err53] : vErrors.push(err53), errors++;
                }
              } else {
                let err54 = { instancePath: instancePath + "/server-types/" + key6.replace(/~/g, "~0").replace(/\//g, "~1") + "/stopped", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema162.type, parentSchema: schema162, data: data21 };
                vErrors === null ? vErrors = [err54] : vErrors.push(err54), errors++;
              }
            }
          } else {
            let err55 = { instancePath: instancePath + "/server-types/" + key6.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/server-types/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema158.properties["server-types"].additionalProperties.type, parentSchema: schema158.properties["server-types"].additionalProperties, data: data19 };
            vErrors === null ? vErrors = [err55] : vErrors.push(err55), errors++;
          }
        }
      } else {
        let err56 = { instancePath: instancePath + "/server-types", schemaPath: "#/properties/server-types/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema158.properties["server-types"].type, parentSchema: schema158.properties["server-types"], data: data18 };
        vErrors === null ? vErrors = [err56] : vErrors.push(err56), errors++;
      }
    }
  } else {
    let err57 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema158.type, parentSchema: schema158, data };
    vErrors === null ? vErrors = [err57] : vErrors.push(err57), errors++;
  }
  return validate74.errors = vErrors, errors === 0;
}
validate74.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var procedure = validate75, schema173 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "procedure.json", title: "ProcedureFile", description: "Procedures: what each action is called, the commands for it, what is to be seen then and how to step back, for one kind of guest or one provider.", type: "object", additionalProperties: !1, required: ["actions"], properties: { guest: { $ref: "common.json#/$defs/name", description: "The kind of guest, as servers name it by guest. That of a shipped one, such as linux-lvm, puts these procedures over the shipped ones." }, provider: { $ref: "common.json#/$defs/name", description: "The provider, in place of a kind of guest. Its procedures are put over those in plain words." }, sites: { type: "array", minItems: 1, uniqueItems: !0, items: { $ref: "common.json#/$defs/name" }, description: "Of a provider: the sites that are its own; all of them if left out." }, like: { $ref: "common.json#/$defs/name", description: "Of a guest: the kind whose procedures hold for whatever is not said here; the shipped one of the same name, or other, if left out." }, actions: { title: "ProcedureActions", type: "object", additionalProperties: !1, description: "What is done, by the action's name.", properties: { "check-backup": { $ref: "#/$defs/action" }, "check-group": { $ref: "#/$defs/action" }, "check-replacement": { $ref: "#/$defs/action" }, "check-member-replacement": { $ref: "#/$defs/action" }, "check-root": { $ref: "#/$defs/action" }, "check-missed": { $ref: "#/$defs/action" }, "check-name": { $ref: "#/$defs/action" }, "check-server-there": { $ref: "#/$defs/action" }, "check-volume-there": { $ref: "#/$defs/action" }, "check-layers": { $ref: "#/$defs/action" }, "check-identity": { $ref: "#/$defs/action" }, "create-volume": { $ref: "#/$defs/action" }, "grow-volume": { $ref: "#/$defs/action" }, "move-tier": { $ref: "#/$defs/action" }, "create-smaller": { $ref: "#/$defs/action" }, "attach-smaller": { $ref: "#/$defs/action" }, "detach-old": { $ref: "#/$defs/action" }, "fill-smaller": { $ref: "#/$defs/action" }, "copy-across": { $ref: "#/$defs/action" }, "fill-boot": { $ref: "#/$defs/action" }, "install-over": { $ref: "#/$defs/action" }, unprotect: { $ref: "#/$defs/action" }, "unprotect-old": { $ref: "#/$defs/action" }, protect: { $ref: "#/$defs/action" }, share: { $ref: "#/$defs/action" }, unshare: { $ref: "#/$defs/action" }, attach: { $ref: "#/$defs/action" }, "attach-boot": { $ref: "#/$defs/action" }, detach: { $ref: "#/$defs/action" }, "attach-for-a-while": { $ref: "#/$defs/action" }, "detach-again": { $ref: "#/$defs/action" }, "delete-volume": { $ref: "#/$defs/action" }, "delete-old": { $ref: "#/$defs/action" }, "create-server": { $ref: "#/$defs/action" }, "delete-server": { $ref: "#/$defs/action" }, "stop-server": { $ref: "#/$defs/action" }, "start-server": { $ref: "#/$defs/action" }, "change-server-type": { $ref: "#/$defs/action" }, "move-server": { $ref: "#/$defs/action" }, "set-boot": { $ref: "#/$defs/action" }, "see-device": { $ref: "#/$defs/action" }, "see-size": { $ref: "#/$defs/action" }, "grow-partition": { $ref: "#/$defs/action" }, "grow-inside": { $ref: "#/$defs/action" }, "grow-member": { $ref: "#/$defs/action" }, "make-group": { $ref: "#/$defs/action" }, "make-group-over": { $ref: "#/$defs/action" }, "join-group": { $ref: "#/$defs/action" }, "join-group-over": { $ref: "#/$defs/action" }, "leave-group": { $ref: "#/$defs/action" }, "replace-member": { $ref: "#/$defs/action" }, "remove-group": { $ref: "#/$defs/action" }, "rename-group": { $ref: "#/$defs/action" }, "re-extent": { $ref: "#/$defs/action" }, "convert-layout": { $ref: "#/$defs/action" }, "lay-out-anew": { $ref: "#/$defs/action" }, deactivate: { $ref: "#/$defs/action" }, export: { $ref: "#/$defs/action" }, "check-detached": { $ref: "#/$defs/action" }, import: { $ref: "#/$defs/action" }, activate: { $ref: "#/$defs/action" }, "stop-use": { $ref: "#/$defs/action" }, "check-fstab": { $ref: "#/$defs/action" }, unmount: { $ref: "#/$defs/action" }, "unmount-swap": { $ref: "#/$defs/action" }, mount: { $ref: "#/$defs/action" }, "mount-swap": { $ref: "#/$defs/action" }, "export-pool": { $ref: "#/$defs/action" }, "import-pool": { $ref: "#/$defs/action" }, "make-logical-volume": { $ref: "#/$defs/action" }, "extend-logical-volume": { $ref: "#/$defs/action" }, "reduce-logical-volume": { $ref: "#/$defs/action" }, "cut-logical-volume": { $ref: "#/$defs/action" }, "remove-file-system": { $ref: "#/$defs/action" }, "give-up-file-system": { $ref: "#/$defs/action" }, "make-file-system": { $ref: "#/$defs/action" }, "make-file-system-over": { $ref: "#/$defs/action" }, "make-anew": { $ref: "#/$defs/action" }, "set-reserve": { $ref: "#/$defs/action" }, "bring-back": { $ref: "#/$defs/action" }, "bring-over": { $ref: "#/$defs/action" }, "grow-mounted": { $ref: "#/$defs/action" }, "grow-unmounted": { $ref: "#/$defs/action" }, "shrink-mounted": { $ref: "#/$defs/action" }, "shrink-unmounted": { $ref: "#/$defs/action" }, "put-smaller-in-place": { $ref: "#/$defs/action" } } } }, $defs: { action: { title: "ProcedureDeclaration", type: "object", additionalProperties: !1, minProperties: 1, description: "What is said here replaces what is said of the same action, key by key; cautions are added.", properties: { does: { $ref: "#/$defs/words", description: "What to do, one sentence or two. A name in braces is filled in: {volume}. Write {{ for a brace." }, why: { $ref: "#/$defs/words", description: "Why it is needed." }, seen: { $ref: "#/$defs/words", description: "What is to be seen once it is done." }, back: { $ref: "#/$defs/words", description: "How to step back." }, cautions: { type: "array", items: { $ref: "#/$defs/words" }, description: "What to make sure of first, beside what Ullage says." }, commands: { type: "array", description: "How it is done from a command line, as examples, in order; an empty list where there is no such way.", items: { $ref: "#/$defs/command" } } } }, words: { title: "Sentence", type: "string", maxLength: 1e3, pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, argument: { title: "Argument", type: "string", maxLength: 1e3, pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]+$" }, command: { title: "CommandDeclaration", type: "object", additionalProperties: !1, description: "One command: run, a list of arguments; or write and into, a text written to a file.", properties: { run: { type: "array", minItems: 1, description: "The program and its arguments, each by itself and without quotes: quoting is done when it is shown. A list within the list is left out where what it asks for is not known or not declared.", items: { anyOf: [{ $ref: "#/$defs/argument" }, { type: "array", minItems: 1, items: { $ref: "#/$defs/argument" } }] } }, write: { $ref: "#/$defs/argument", description: "The text to write." }, into: { $ref: "#/$defs/argument", description: "The file to write it to." }, types: { type: "array", minItems: 1, uniqueItems: !0, items: { $ref: "estate.json#/$defs/fileSystemType" }, description: "The types of file system that it is for; any if left out." }, from: { $ref: "common.json#/$defs/sentence", description: "Where it was read, such as pvresize(8) and the version." } } } } }, func0 = require_equal().default, schema178 = { title: "ProcedureDeclaration", type: "object", additionalProperties: !1, minProperties: 1, description: "What is said here replaces what is said of the same action, key by key; cautions are added.", properties: { does: { $ref: "#/$defs/words", description: "What to do, one sentence or two. A name in braces is filled in: {volume}. Write {{ for a brace." }, why: { $ref: "#/$defs/words", description: "Why it is needed." }, seen: { $ref: "#/$defs/words", description: "What is to be seen once it is done." }, back: { $ref: "#/$defs/words", description: "How to step back." }, cautions: { type: "array", items: { $ref: "#/$defs/words" }, description: "What to make sure of first, beside what Ullage says." }, commands: { type: "array", description: "How it is done from a command line, as examples, in order; an empty list where there is no such way.", items: { $ref: "#/$defs/command" } } } }, schema179 = { title: "Sentence", type: "string", maxLength: 1e3, pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, func10 = require_ucs2length().default, pattern104 = new RegExp("^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$", "u"), schema184 = { title: "CommandDeclaration", type: "object", additionalProperties: !1, description: "One command: run, a list of arguments; or write and into, a text written to a file.", properties: { run: { type: "array", minItems: 1, description: "The program and its arguments, each by itself and without quotes: quoting is done when it is shown. A list within the list is left out where what it asks for is not known or not declared.", items: { anyOf: [{ $ref: "#/$defs/argument" }, { type: "array", minItems: 1, items: { $ref: "#/$defs/argument" } }] } }, write: { $ref: "#/$defs/argument", description: "The text to write." }, into: { $ref: "#/$defs/argument", description: "The file to write it to." }, types: { type: "array", minItems: 1, uniqueItems: !0, items: { $ref: "estate.json#/$defs/fileSystemType" }, description: "The types of file system that it is for; any if left out." }, from: { $ref: "common.json#/$defs/sentence", description: "Where it was read, such as pvresize(8) and the version." } } }, schema185 = { title: "Argument", type: "string", maxLength: 1e3, pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]+$" }, pattern109 = new RegExp("^[^\\u0000-\\u001f\\u007f-\\u009f]+$", "u");
function validate77(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate77.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    for (let key0 in data)
      if (!(key0 === "run" || key0 === "write" || key0 === "into" || key0 === "types" || key0 === "from")) {
        let err0 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema184, data };
        vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
      }
    if (data.run !== void 0) {
      let data0 = data.run;
      if (Array.isArray(data0)) {
        if (data0.length < 1) {
          let err1 = { instancePath: instancePath + "/run", schemaPath: "#/properties/run/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema184.properties.run, data: data0 };
          vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
        }
        let len0 = data0.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data1 = data0[i0], _errs5 = errors, valid3 = !1, _errs6 = errors;
          if (typeof data1 == "string") {
            if (func10(data1) > 1e3) {
              let err2 = { instancePath: instancePath + "/run/" + i0, schemaPath: "#/$defs/argument/maxLength", keyword: "maxLength", params: { limit: 1e3 }, message: "must NOT have more than 1000 characters", schema: 1e3, parentSchema: schema185, data: data1 };
              vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
            }
            if (!pattern109.test(data1)) {
              let err3 = { instancePath: instancePath + "/run/" + i0, schemaPath: "#/$defs/argument/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]+$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]+$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]+$", parentSchema: schema185, data: data1 };
              vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
            }
          } else {
            let err4 = { instancePath: instancePath + "/run/" + i0, schemaPath: "#/$defs/argument/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema185.type, parentSchema: schema185, data: data1 };
            vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
          }
          var _valid0 = _errs6 === errors;
          valid3 = valid3 || _valid0;
          let _errs9 = errors;
          if (Array.isArray(data1)) {
            if (data1.length < 1) {
              let err5 = { instancePath: instancePath + "/run/" + i0, schemaPath: "#/properties/run/items/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema184.properties.run.items.anyOf[1], data: data1 };
              vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
            }
            let len1 = data1.length;
            for (let i1 = 0; i1 < len1; i1++) {
              let data2 = data1[i1];
              if (typeof data2 == "string") {
                if (func10(data2) > 1e3) {
                  let err6 = { instancePath: instancePath + "/run/" + i0 + "/" + i1, schemaPath: "#/$defs/argument/maxLength", keyword: "maxLength", params: { limit: 1e3 }, message: "must NOT have more than 1000 characters", schema: 1e3, parentSchema: schema185, data: data2 };
                  vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
                }
                if (!pattern109.test(data2)) {
                  let err7 = { instancePath: instancePath + "/run/" + i0 + "/" + i1, schemaPath: "#/$defs/argument/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]+$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]+$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]+$", parentSchema: schema185, data: data2 };
                  vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
                }
              } else {
                let err8 = { instancePath: instancePath + "/run/" + i0 + "/" + i1, schemaPath: "#/$defs/argument/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema185.type, parentSchema: schema185, data: data2 };
                vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
              }
            }
          } else {
            let err9 = { instancePath: instancePath + "/run/" + i0, schemaPath: "#/properties/run/items/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema184.properties.run.items.anyOf[1].type, parentSchema: schema184.properties.run.items.anyOf[1], data: data1 };
            vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
          }
          var _valid0 = _errs9 === errors;
          if (valid3 = valid3 || _valid0, valid3)
            errors = _errs5, vErrors !== null && (_errs5 ? vErrors.length = _errs5 : vErrors = null);
          else {
            let err10 = { instancePath: instancePath + "/run/" + i0, schemaPath: "#/properties/run/items/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf", schema: schema184.properties.run.items.anyOf, parentSchema: schema184.properties.run.items, data: data1 };
            vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
          }
        }
      } else {
        let err11 = { instancePath: instancePath + "/run", schemaPath: "#/properties/run/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema184.properties.run.type, parentSchema: schema184.properties.run, data: data0 };
        vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
      }
    }
    if (data.write !== void 0) {
      let data3 = data.write;
      if (typeof data3 == "string") {
        if (func10(data3) > 1e3) {
          let err12 = { instancePath: instancePath + "/write", schemaPath: "#/$defs/argument/maxLength", keyword: "maxLength", params: { limit: 1e3 }, message: "must NOT have more than 1000 characters", schema: 1e3, parentSchema: schema185, data: data3 };
          vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
        }
        if (!pattern109.test(data3)) {
          let err13 = { instancePath: instancePath + "/write", schemaPath: "#/$defs/argument/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]+$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]+$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]+$", parentSchema: schema185, data: data3 };
          vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
        }
      } else {
        let err14 = { instancePath: instancePath + "/write", schemaPath: "#/$defs/argument/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema185.type, parentSchema: schema185, data: data3 };
        vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
      }
    }
    if (data.into !== void 0) {
      let data4 = data.into;
      if (typeof data4 == "string") {
        if (func10(data4) > 1e3) {
          let err15 = { instancePath: instancePath + "/into", schemaPath: "#/$defs/argument/maxLength", keyword: "maxLength", params: { limit: 1e3 }, message: "must NOT have more than 1000 characters", schema: 1e3, parentSchema: schema185, data: data4 };
          vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
        }
        if (!pattern109.test(data4)) {
          let err16 = { instancePath: instancePath + "/into", schemaPath: "#/$defs/argument/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]+$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]+$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]+$", parentSchema: schema185, data: data4 };
          vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
        }
      } else {
        let err17 = { instancePath: instancePath + "/into", schemaPath: "#/$defs/argument/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema185.type, parentSchema: schema185, data: data4 };
        vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
      }
    }
    if (data.types !== void 0) {
      let data5 = data.types;
      if (Array.isArray(data5)) {
        if (data5.length < 1) {
          let err18 = { instancePath: instancePath + "/types", schemaPath: "#/properties/types/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema184.properties.types, data: data5 };
          vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
        }
        let len2 = data5.length;
        for (let i2 = 0; i2 < len2; i2++) {
          let data6 = data5[i2];
          if (typeof data6 != "string") {
            let err19 = { instancePath: instancePath + "/types/" + i2, schemaPath: "estate.json#/$defs/fileSystemType/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema99.type, parentSchema: schema99, data: data6 };
            vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
          }
          if (!(data6 === "ext2" || data6 === "ext3" || data6 === "ext4" || data6 === "xfs" || data6 === "btrfs" || data6 === "zfs" || data6 === "ntfs" || data6 === "vfat" || data6 === "gfs2" || data6 === "ocfs2" || data6 === "swap")) {
            let err20 = { instancePath: instancePath + "/types/" + i2, schemaPath: "estate.json#/$defs/fileSystemType/enum", keyword: "enum", params: { allowedValues: schema99.enum }, message: "must be equal to one of the allowed values", schema: schema99.enum, parentSchema: schema99, data: data6 };
            vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
          }
        }
        let i3 = data5.length, j0;
        if (i3 > 1) {
          outer0: for (; i3--; )
            for (j0 = i3; j0--; )
              if (func0(data5[i3], data5[j0])) {
                let err21 = { instancePath: instancePath + "/types", schemaPath: "#/properties/types/uniqueItems", keyword: "uniqueItems", params: { i: i3, j: j0 }, message: "must NOT have duplicate items (items ## " + j0 + " and " + i3 + " are identical)", schema: !0, parentSchema: schema184.properties.types, data: data5 };
                vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
                break outer0;
              }
        }
      } else {
        let err22 = { instancePath: instancePath + "/types", schemaPath: "#/properties/types/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema184.properties.types.type, parentSchema: schema184.properties.types, data: data5 };
        vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
      }
    }
    if (data.from !== void 0) {
      let data7 = data.from;
      if (typeof data7 == "string") {
        if (!pattern28.test(data7)) {
          let err23 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema94, data: data7 };
          vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
        }
      } else {
        let err24 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema94.type, parentSchema: schema94, data: data7 };
        vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
      }
    }
  } else {
    let err25 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema184.type, parentSchema: schema184, data };
    vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
  }
  return validate77.errors = vErrors, errors === 0;
}
validate77.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate76(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate76.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (Object.keys(data).length < 1) {
      let err0 = { instancePath, schemaPath: "#/minProperties", keyword: "minProperties", params: { limit: 1 }, message: "must NOT have fewer than 1 properties", schema: 1, parentSchema: schema178, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "does" || key0 === "why" || key0 === "seen" || key0 === "back" || key0 === "cautions" || key0 === "commands")) {
        let err1 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema178, data };
        vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
      }
    if (data.does !== void 0) {
      let data0 = data.does;
      if (typeof data0 == "string") {
        if (func10(data0) > 1e3) {
          let err2 = { instancePath: instancePath + "/does", schemaPath: "#/$defs/words/maxLength", keyword: "maxLength", params: { limit: 1e3 }, message: "must NOT have more than 1000 characters", schema: 1e3, parentSchema: schema179, data: data0 };
          vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
        }
        if (!pattern104.test(data0)) {
          let err3 = { instancePath: instancePath + "/does", schemaPath: "#/$defs/words/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema179, data: data0 };
          vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
        }
      } else {
        let err4 = { instancePath: instancePath + "/does", schemaPath: "#/$defs/words/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema179.type, parentSchema: schema179, data: data0 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
    if (data.why !== void 0) {
      let data1 = data.why;
      if (typeof data1 == "string") {
        if (func10(data1) > 1e3) {
          let err5 = { instancePath: instancePath + "/why", schemaPath: "#/$defs/words/maxLength", keyword: "maxLength", params: { limit: 1e3 }, message: "must NOT have more than 1000 characters", schema: 1e3, parentSchema: schema179, data: data1 };
          vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
        }
        if (!pattern104.test(data1)) {
          let err6 = { instancePath: instancePath + "/why", schemaPath: "#/$defs/words/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema179, data: data1 };
          vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
        }
      } else {
        let err7 = { instancePath: instancePath + "/why", schemaPath: "#/$defs/words/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema179.type, parentSchema: schema179, data: data1 };
        vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
      }
    }
    if (data.seen !== void 0) {
      let data2 = data.seen;
      if (typeof data2 == "string") {
        if (func10(data2) > 1e3) {
          let err8 = { instancePath: instancePath + "/seen", schemaPath: "#/$defs/words/maxLength", keyword: "maxLength", params: { limit: 1e3 }, message: "must NOT have more than 1000 characters", schema: 1e3, parentSchema: schema179, data: data2 };
          vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
        }
        if (!pattern104.test(data2)) {
          let err9 = { instancePath: instancePath + "/seen", schemaPath: "#/$defs/words/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema179, data: data2 };
          vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
        }
      } else {
        let err10 = { instancePath: instancePath + "/seen", schemaPath: "#/$defs/words/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema179.type, parentSchema: schema179, data: data2 };
        vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
      }
    }
    if (data.back !== void 0) {
      let data3 = data.back;
      if (typeof data3 == "string") {
        if (func10(data3) > 1e3) {
          let err11 = { instancePath: instancePath + "/back", schemaPath: "#/$defs/words/maxLength", keyword: "maxLength", params: { limit: 1e3 }, message: "must NOT have more than 1000 characters", schema: 1e3, parentSchema: schema179, data: data3 };
          vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
        }
        if (!pattern104.test(data3)) {
          let err12 = { instancePath: instancePath + "/back", schemaPath: "#/$defs/words/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema179, data: data3 };
          vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
        }
      } else {
        let err13 = { instancePath: instancePath + "/back", schemaPath: "#/$defs/words/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema179.type, parentSchema: schema179, data: data3 };
        vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
      }
    }
    if (data.cautions !== void 0) {
      let data4 = data.cautions;
      if (Array.isArray(data4)) {
        let len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data5 = data4[i0];
          if (typeof data5 == "string") {
            if (func10(data5) > 1e3) {
              let err14 = { instancePath: instancePath + "/cautions/" + i0, schemaPath: "#/$defs/words/maxLength", keyword: "maxLength", params: { limit: 1e3 }, message: "must NOT have more than 1000 characters", schema: 1e3, parentSchema: schema179, data: data5 };
              vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
            }
            if (!pattern104.test(data5)) {
              let err15 = { instancePath: instancePath + "/cautions/" + i0, schemaPath: "#/$defs/words/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*\\S[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema179, data: data5 };
              vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
            }
          } else {
            let err16 = { instancePath: instancePath + "/cautions/" + i0, schemaPath: "#/$defs/words/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema179.type, parentSchema: schema179, data: data5 };
            vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
          }
        }
      } else {
        let err17 = { instancePath: instancePath + "/cautions", schemaPath: "#/properties/cautions/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema178.properties.cautions.type, parentSchema: schema178.properties.cautions, data: data4 };
        vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
      }
    }
    if (data.commands !== void 0) {
      let data6 = data.commands;
      if (Array.isArray(data6)) {
        let len1 = data6.length;
        for (let i1 = 0; i1 < len1; i1++)
          validate77(data6[i1], { instancePath: instancePath + "/commands/" + i1, parentData: data6, parentDataProperty: i1, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate77.errors : vErrors.concat(validate77.errors), errors = vErrors.length);
      } else {
        let err18 = { instancePath: instancePath + "/commands", schemaPath: "#/properties/commands/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema178.properties.commands.type, parentSchema: schema178.properties.commands, data: data6 };
        vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
      }
    }
  } else {
    let err19 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema178.type, parentSchema: schema178, data };
    vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
  }
  return validate76.errors = vErrors, errors === 0;
}
validate76.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate75(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate75.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.actions === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "actions" }, message: "must have required property 'actions'", schema: schema173.required, parentSchema: schema173, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "guest" || key0 === "provider" || key0 === "sites" || key0 === "like" || key0 === "actions")) {
        let err1 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema173, data };
        vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
      }
    if (data.guest !== void 0) {
      let data0 = data.guest;
      if (typeof data0 == "string") {
        if (!pattern13.test(data0)) {
          let err2 = { instancePath: instancePath + "/guest", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data0 };
          vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
        }
      } else {
        let err3 = { instancePath: instancePath + "/guest", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data0 };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    }
    if (data.provider !== void 0) {
      let data1 = data.provider;
      if (typeof data1 == "string") {
        if (!pattern13.test(data1)) {
          let err4 = { instancePath: instancePath + "/provider", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data1 };
          vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
        }
      } else {
        let err5 = { instancePath: instancePath + "/provider", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data1 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
    }
    if (data.sites !== void 0) {
      let data2 = data.sites;
      if (Array.isArray(data2)) {
        if (data2.length < 1) {
          let err6 = { instancePath: instancePath + "/sites", schemaPath: "#/properties/sites/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema173.properties.sites, data: data2 };
          vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
        }
        let len0 = data2.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data3 = data2[i0];
          if (typeof data3 == "string") {
            if (!pattern13.test(data3)) {
              let err7 = { instancePath: instancePath + "/sites/" + i0, schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data3 };
              vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
            }
          } else {
            let err8 = { instancePath: instancePath + "/sites/" + i0, schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data3 };
            vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
          }
        }
        let i1 = data2.length, j0;
        if (i1 > 1) {
          outer0: for (; i1--; )
            for (j0 = i1; j0--; )
              if (func0(data2[i1], data2[j0])) {
                let err9 = { instancePath: instancePath + "/sites", schemaPath: "#/properties/sites/uniqueItems", keyword: "uniqueItems", params: { i: i1, j: j0 }, message: "must NOT have duplicate items (items ## " + j0 + " and " + i1 + " are identical)", schema: !0, parentSchema: schema173.properties.sites, data: data2 };
                vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
                break outer0;
              }
        }
      } else {
        let err10 = { instancePath: instancePath + "/sites", schemaPath: "#/properties/sites/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema173.properties.sites.type, parentSchema: schema173.properties.sites, data: data2 };
        vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
      }
    }
    if (data.like !== void 0) {
      let data4 = data.like;
      if (typeof data4 == "string") {
        if (!pattern13.test(data4)) {
          let err11 = { instancePath: instancePath + "/like", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data4 };
          vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
        }
      } else {
        let err12 = { instancePath: instancePath + "/like", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data4 };
        vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
      }
    }
    if (data.actions !== void 0) {
      let data5 = data.actions;
      if (data5 && typeof data5 == "object" && !Array.isArray(data5)) {
        for (let key1 in data5)
          if (!func1.call(schema173.properties.actions.properties, key1)) {
            let err13 = { instancePath: instancePath + "/actions", schemaPath: "#/properties/actions/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema173.properties.actions, data: data5 };
            vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
          }
        data5["check-backup"] !== void 0 && (validate76(data5["check-backup"], { instancePath: instancePath + "/actions/check-backup", parentData: data5, parentDataProperty: "check-backup", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-group"] !== void 0 && (validate76(data5["check-group"], { instancePath: instancePath + "/actions/check-group", parentData: data5, parentDataProperty: "check-group", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-replacement"] !== void 0 && (validate76(data5["check-replacement"], { instancePath: instancePath + "/actions/check-replacement", parentData: data5, parentDataProperty: "check-replacement", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-member-replacement"] !== void 0 && (validate76(data5["check-member-replacement"], { instancePath: instancePath + "/actions/check-member-replacement", parentData: data5, parentDataProperty: "check-member-replacement", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-root"] !== void 0 && (validate76(data5["check-root"], { instancePath: instancePath + "/actions/check-root", parentData: data5, parentDataProperty: "check-root", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-missed"] !== void 0 && (validate76(data5["check-missed"], { instancePath: instancePath + "/actions/check-missed", parentData: data5, parentDataProperty: "check-missed", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-name"] !== void 0 && (validate76(data5["check-name"], { instancePath: instancePath + "/actions/check-name", parentData: data5, parentDataProperty: "check-name", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-server-there"] !== void 0 && (validate76(data5["check-server-there"], { instancePath: instancePath + "/actions/check-server-there", parentData: data5, parentDataProperty: "check-server-there", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-volume-there"] !== void 0 && (validate76(data5["check-volume-there"], { instancePath: instancePath + "/actions/check-volume-there", parentData: data5, parentDataProperty: "check-volume-there", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-layers"] !== void 0 && (validate76(data5["check-layers"], { instancePath: instancePath + "/actions/check-layers", parentData: data5, parentDataProperty: "check-layers", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-identity"] !== void 0 && (validate76(data5["check-identity"], { instancePath: instancePath + "/actions/check-identity", parentData: data5, parentDataProperty: "check-identity", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["create-volume"] !== void 0 && (validate76(data5["create-volume"], { instancePath: instancePath + "/actions/create-volume", parentData: data5, parentDataProperty: "create-volume", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["grow-volume"] !== void 0 && (validate76(data5["grow-volume"], { instancePath: instancePath + "/actions/grow-volume", parentData: data5, parentDataProperty: "grow-volume", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["move-tier"] !== void 0 && (validate76(data5["move-tier"], { instancePath: instancePath + "/actions/move-tier", parentData: data5, parentDataProperty: "move-tier", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["create-smaller"] !== void 0 && (validate76(data5["create-smaller"], { instancePath: instancePath + "/actions/create-smaller", parentData: data5, parentDataProperty: "create-smaller", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["attach-smaller"] !== void 0 && (validate76(data5["attach-smaller"], { instancePath: instancePath + "/actions/attach-smaller", parentData: data5, parentDataProperty: "attach-smaller", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["detach-old"] !== void 0 && (validate76(data5["detach-old"], { instancePath: instancePath + "/actions/detach-old", parentData: data5, parentDataProperty: "detach-old", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["fill-smaller"] !== void 0 && (validate76(data5["fill-smaller"], { instancePath: instancePath + "/actions/fill-smaller", parentData: data5, parentDataProperty: "fill-smaller", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["copy-across"] !== void 0 && (validate76(data5["copy-across"], { instancePath: instancePath + "/actions/copy-across", parentData: data5, parentDataProperty: "copy-across", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["fill-boot"] !== void 0 && (validate76(data5["fill-boot"], { instancePath: instancePath + "/actions/fill-boot", parentData: data5, parentDataProperty: "fill-boot", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["install-over"] !== void 0 && (validate76(data5["install-over"], { instancePath: instancePath + "/actions/install-over", parentData: data5, parentDataProperty: "install-over", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.unprotect !== void 0 && (validate76(data5.unprotect, { instancePath: instancePath + "/actions/unprotect", parentData: data5, parentDataProperty: "unprotect", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["unprotect-old"] !== void 0 && (validate76(data5["unprotect-old"], { instancePath: instancePath + "/actions/unprotect-old", parentData: data5, parentDataProperty: "unprotect-old", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.protect !== void 0 && (validate76(data5.protect, { instancePath: instancePath + "/actions/protect", parentData: data5, parentDataProperty: "protect", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.share !== void 0 && (validate76(data5.share, { instancePath: instancePath + "/actions/share", parentData: data5, parentDataProperty: "share", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.unshare !== void 0 && (validate76(data5.unshare, { instancePath: instancePath + "/actions/unshare", parentData: data5, parentDataProperty: "unshare", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.attach !== void 0 && (validate76(data5.attach, { instancePath: instancePath + "/actions/attach", parentData: data5, parentDataProperty: "attach", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["attach-boot"] !== void 0 && (validate76(data5["attach-boot"], { instancePath: instancePath + "/actions/attach-boot", parentData: data5, parentDataProperty: "attach-boot", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.detach !== void 0 && (validate76(data5.detach, { instancePath: instancePath + "/actions/detach", parentData: data5, parentDataProperty: "detach", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["attach-for-a-while"] !== void 0 && (validate76(data5["attach-for-a-while"], { instancePath: instancePath + "/actions/attach-for-a-while", parentData: data5, parentDataProperty: "attach-for-a-while", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["detach-again"] !== void 0 && (validate76(data5["detach-again"], { instancePath: instancePath + "/actions/detach-again", parentData: data5, parentDataProperty: "detach-again", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["delete-volume"] !== void 0 && (validate76(data5["delete-volume"], { instancePath: instancePath + "/actions/delete-volume", parentData: data5, parentDataProperty: "delete-volume", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["delete-old"] !== void 0 && (validate76(data5["delete-old"], { instancePath: instancePath + "/actions/delete-old", parentData: data5, parentDataProperty: "delete-old", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["create-server"] !== void 0 && (validate76(data5["create-server"], { instancePath: instancePath + "/actions/create-server", parentData: data5, parentDataProperty: "create-server", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["delete-server"] !== void 0 && (validate76(data5["delete-server"], { instancePath: instancePath + "/actions/delete-server", parentData: data5, parentDataProperty: "delete-server", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["stop-server"] !== void 0 && (validate76(data5["stop-server"], { instancePath: instancePath + "/actions/stop-server", parentData: data5, parentDataProperty: "stop-server", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["start-server"] !== void 0 && (validate76(data5["start-server"], { instancePath: instancePath + "/actions/start-server", parentData: data5, parentDataProperty: "start-server", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["change-server-type"] !== void 0 && (validate76(data5["change-server-type"], { instancePath: instancePath + "/actions/change-server-type", parentData: data5, parentDataProperty: "change-server-type", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["move-server"] !== void 0 && (validate76(data5["move-server"], { instancePath: instancePath + "/actions/move-server", parentData: data5, parentDataProperty: "move-server", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["set-boot"] !== void 0 && (validate76(data5["set-boot"], { instancePath: instancePath + "/actions/set-boot", parentData: data5, parentDataProperty: "set-boot", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["see-device"] !== void 0 && (validate76(data5["see-device"], { instancePath: instancePath + "/actions/see-device", parentData: data5, parentDataProperty: "see-device", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["see-size"] !== void 0 && (validate76(data5["see-size"], { instancePath: instancePath + "/actions/see-size", parentData: data5, parentDataProperty: "see-size", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["grow-partition"] !== void 0 && (validate76(data5["grow-partition"], { instancePath: instancePath + "/actions/grow-partition", parentData: data5, parentDataProperty: "grow-partition", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["grow-inside"] !== void 0 && (validate76(data5["grow-inside"], { instancePath: instancePath + "/actions/grow-inside", parentData: data5, parentDataProperty: "grow-inside", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["grow-member"] !== void 0 && (validate76(data5["grow-member"], { instancePath: instancePath + "/actions/grow-member", parentData: data5, parentDataProperty: "grow-member", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["make-group"] !== void 0 && (validate76(data5["make-group"], { instancePath: instancePath + "/actions/make-group", parentData: data5, parentDataProperty: "make-group", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["make-group-over"] !== void 0 && (validate76(data5["make-group-over"], { instancePath: instancePath + "/actions/make-group-over", parentData: data5, parentDataProperty: "make-group-over", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["join-group"] !== void 0 && (validate76(data5["join-group"], { instancePath: instancePath + "/actions/join-group", parentData: data5, parentDataProperty: "join-group", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["join-group-over"] !== void 0 && (validate76(data5["join-group-over"], { instancePath: instancePath + "/actions/join-group-over", parentData: data5, parentDataProperty: "join-group-over", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["leave-group"] !== void 0 && (validate76(data5["leave-group"], { instancePath: instancePath + "/actions/leave-group", parentData: data5, parentDataProperty: "leave-group", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["replace-member"] !== void 0 && (validate76(data5["replace-member"], { instancePath: instancePath + "/actions/replace-member", parentData: data5, parentDataProperty: "replace-member", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["remove-group"] !== void 0 && (validate76(data5["remove-group"], { instancePath: instancePath + "/actions/remove-group", parentData: data5, parentDataProperty: "remove-group", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["rename-group"] !== void 0 && (validate76(data5["rename-group"], { instancePath: instancePath + "/actions/rename-group", parentData: data5, parentDataProperty: "rename-group", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["re-extent"] !== void 0 && (validate76(data5["re-extent"], { instancePath: instancePath + "/actions/re-extent", parentData: data5, parentDataProperty: "re-extent", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["convert-layout"] !== void 0 && (validate76(data5["convert-layout"], { instancePath: instancePath + "/actions/convert-layout", parentData: data5, parentDataProperty: "convert-layout", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["lay-out-anew"] !== void 0 && (validate76(data5["lay-out-anew"], { instancePath: instancePath + "/actions/lay-out-anew", parentData: data5, parentDataProperty: "lay-out-anew", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.deactivate !== void 0 && (validate76(data5.deactivate, { instancePath: instancePath + "/actions/deactivate", parentData: data5, parentDataProperty: "deactivate", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.export !== void 0 && (validate76(data5.export, { instancePath: instancePath + "/actions/export", parentData: data5, parentDataProperty: "export", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-detached"] !== void 0 && (validate76(data5["check-detached"], { instancePath: instancePath + "/actions/check-detached", parentData: data5, parentDataProperty: "check-detached", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.import !== void 0 && (validate76(data5.import, { instancePath: instancePath + "/actions/import", parentData: data5, parentDataProperty: "import", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.activate !== void 0 && (validate76(data5.activate, { instancePath: instancePath + "/actions/activate", parentData: data5, parentDataProperty: "activate", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["stop-use"] !== void 0 && (validate76(data5["stop-use"], { instancePath: instancePath + "/actions/stop-use", parentData: data5, parentDataProperty: "stop-use", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["check-fstab"] !== void 0 && (validate76(data5["check-fstab"], { instancePath: instancePath + "/actions/check-fstab", parentData: data5, parentDataProperty: "check-fstab", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.unmount !== void 0 && (validate76(data5.unmount, { instancePath: instancePath + "/actions/unmount", parentData: data5, parentDataProperty: "unmount", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["unmount-swap"] !== void 0 && (validate76(data5["unmount-swap"], { instancePath: instancePath + "/actions/unmount-swap", parentData: data5, parentDataProperty: "unmount-swap", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5.mount !== void 0 && (validate76(data5.mount, { instancePath: instancePath + "/actions/mount", parentData: data5, parentDataProperty: "mount", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["mount-swap"] !== void 0 && (validate76(data5["mount-swap"], { instancePath: instancePath + "/actions/mount-swap", parentData: data5, parentDataProperty: "mount-swap", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["export-pool"] !== void 0 && (validate76(data5["export-pool"], { instancePath: instancePath + "/actions/export-pool", parentData: data5, parentDataProperty: "export-pool", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["import-pool"] !== void 0 && (validate76(data5["import-pool"], { instancePath: instancePath + "/actions/import-pool", parentData: data5, parentDataProperty: "import-pool", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["make-logical-volume"] !== void 0 && (validate76(data5["make-logical-volume"], { instancePath: instancePath + "/actions/make-logical-volume", parentData: data5, parentDataProperty: "make-logical-volume", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["extend-logical-volume"] !== void 0 && (validate76(data5["extend-logical-volume"], { instancePath: instancePath + "/actions/extend-logical-volume", parentData: data5, parentDataProperty: "extend-logical-volume", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["reduce-logical-volume"] !== void 0 && (validate76(data5["reduce-logical-volume"], { instancePath: instancePath + "/actions/reduce-logical-volume", parentData: data5, parentDataProperty: "reduce-logical-volume", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["cut-logical-volume"] !== void 0 && (validate76(data5["cut-logical-volume"], { instancePath: instancePath + "/actions/cut-logical-volume", parentData: data5, parentDataProperty: "cut-logical-volume", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["remove-file-system"] !== void 0 && (validate76(data5["remove-file-system"], { instancePath: instancePath + "/actions/remove-file-system", parentData: data5, parentDataProperty: "remove-file-system", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["give-up-file-system"] !== void 0 && (validate76(data5["give-up-file-system"], { instancePath: instancePath + "/actions/give-up-file-system", parentData: data5, parentDataProperty: "give-up-file-system", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["make-file-system"] !== void 0 && (validate76(data5["make-file-system"], { instancePath: instancePath + "/actions/make-file-system", parentData: data5, parentDataProperty: "make-file-system", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["make-file-system-over"] !== void 0 && (validate76(data5["make-file-system-over"], { instancePath: instancePath + "/actions/make-file-system-over", parentData: data5, parentDataProperty: "make-file-system-over", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["make-anew"] !== void 0 && (validate76(data5["make-anew"], { instancePath: instancePath + "/actions/make-anew", parentData: data5, parentDataProperty: "make-anew", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["set-reserve"] !== void 0 && (validate76(data5["set-reserve"], { instancePath: instancePath + "/actions/set-reserve", parentData: data5, parentDataProperty: "set-reserve", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["bring-back"] !== void 0 && (validate76(data5["bring-back"], { instancePath: instancePath + "/actions/bring-back", parentData: data5, parentDataProperty: "bring-back", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["bring-over"] !== void 0 && (validate76(data5["bring-over"], { instancePath: instancePath + "/actions/bring-over", parentData: data5, parentDataProperty: "bring-over", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["grow-mounted"] !== void 0 && (validate76(data5["grow-mounted"], { instancePath: instancePath + "/actions/grow-mounted", parentData: data5, parentDataProperty: "grow-mounted", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["grow-unmounted"] !== void 0 && (validate76(data5["grow-unmounted"], { instancePath: instancePath + "/actions/grow-unmounted", parentData: data5, parentDataProperty: "grow-unmounted", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["shrink-mounted"] !== void 0 && (validate76(data5["shrink-mounted"], { instancePath: instancePath + "/actions/shrink-mounted", parentData: data5, parentDataProperty: "shrink-mounted", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["shrink-unmounted"] !== void 0 && (validate76(data5["shrink-unmounted"], { instancePath: instancePath + "/actions/shrink-unmounted", parentData: data5, parentDataProperty: "shrink-unmounted", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length)), data5["put-smaller-in-place"] !== void 0 && (validate76(data5["put-smaller-in-place"], { instancePath: instancePath + "/actions/put-smaller-in-place", parentData: data5, parentDataProperty: "put-smaller-in-place", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors), errors = vErrors.length));
      } else {
        let err14 = { instancePath: instancePath + "/actions", schemaPath: "#/properties/actions/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema173.properties.actions.type, parentSchema: schema173.properties.actions, data: data5 };
        vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
      }
    }
  } else {
    let err15 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema173.type, parentSchema: schema173, data };
    vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
  }
  return validate75.errors = vErrors, errors === 0;
}
validate75.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var provider_survey = validate165, schema191 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "provider-survey.json", title: "ProviderSurveyFile", description: "What the provider's list shows to be there, at one time: what `ullage survey provider` keeps of it in surveys/provider.json.", type: "object", additionalProperties: !1, required: ["format", "at", "lists", "volumes", "servers"], properties: { format: { const: "ullage-provider-survey-1", description: "The version of this format." }, at: { $ref: "survey.json#/$defs/time", description: "When it was taken." }, lists: { type: "array", items: { type: "string", enum: ["volumes", "servers"] }, uniqueItems: !0, description: "What the list lists: of what it does not list nothing is said to be missing." }, volumes: { type: "array", description: "The volumes, by id, then by name.", items: { title: "ProviderVolume", type: "object", additionalProperties: !1, required: ["size"], description: "One volume.", properties: { id: { $ref: "survey.json#/$defs/text", description: "The provider's own identifier." }, name: { $ref: "survey.json#/$defs/text", description: "Its name there." }, size: { $ref: "survey.json#/$defs/bytes", description: "What is provisioned, and billed." }, tier: { $ref: "survey.json#/$defs/text", description: "Its tier, by your name for it where the settings tell it." }, site: { $ref: "survey.json#/$defs/text", description: "Its site, likewise." }, servers: { type: "array", items: { $ref: "survey.json#/$defs/text" }, uniqueItems: !0, description: "The ids or names of the servers that it is attached to; empty where it is attached to none, left out where the list does not say." }, server: { $ref: "survey.json#/$defs/text", description: "The one server that it is attached to, as lists were kept before `servers`; read still, and no longer written." }, boot: { type: "boolean", description: "Whether a server starts from it." } } } }, servers: { type: "array", description: "The servers, by id, then by name.", items: { title: "ProviderServer", type: "object", additionalProperties: !1, required: [], description: "One server.", properties: { id: { $ref: "survey.json#/$defs/text", description: "The provider's own identifier." }, name: { $ref: "survey.json#/$defs/text", description: "Its name there." }, site: { $ref: "survey.json#/$defs/text", description: "Its site, by your name for it where the settings tell it." }, type: { $ref: "survey.json#/$defs/text", description: "Its server type, likewise." }, power: { type: "string", enum: ["running", "stopped"], description: "Whether it runs." }, boot: { $ref: "survey.json#/$defs/text", description: "The id or name of the volume it starts from." } } } } } }, schema129 = { title: "SurveyText", type: "string", minLength: 1, maxLength: 255, pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", description: "A name as the server has it, without control characters." }, schema132 = { title: "ByteCount", type: "string", pattern: "^(0|[1-9][0-9]{0,18})$", description: "A whole number of bytes." }, pattern58 = new RegExp("^[^\\u0000-\\u001f\\u007f-\\u009f]*$", "u"), pattern62 = new RegExp("^(0|[1-9][0-9]{0,18})$", "u");
function validate165(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate165.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.format === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "format" }, message: "must have required property 'format'", schema: schema191.required, parentSchema: schema191, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.at === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "at" }, message: "must have required property 'at'", schema: schema191.required, parentSchema: schema191, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.lists === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "lists" }, message: "must have required property 'lists'", schema: schema191.required, parentSchema: schema191, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.volumes === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "volumes" }, message: "must have required property 'volumes'", schema: schema191.required, parentSchema: schema191, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    if (data.servers === void 0) {
      let err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "servers" }, message: "must have required property 'servers'", schema: schema191.required, parentSchema: schema191, data };
      vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "format" || key0 === "at" || key0 === "lists" || key0 === "volumes" || key0 === "servers")) {
        let err5 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema191, data };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
    if (data.format !== void 0) {
      let data0 = data.format;
      if (data0 !== "ullage-provider-survey-1") {
        let err6 = { instancePath: instancePath + "/format", schemaPath: "#/properties/format/const", keyword: "const", params: { allowedValue: "ullage-provider-survey-1" }, message: "must be equal to constant", schema: "ullage-provider-survey-1", parentSchema: schema191.properties.format, data: data0 };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    }
    if (data.at !== void 0) {
      let data1 = data.at;
      if (typeof data1 == "string") {
        if (!pattern56.test(data1)) {
          let err7 = { instancePath: instancePath + "/at", schemaPath: "survey.json#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$", parentSchema: schema127, data: data1 };
          vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
        }
      } else {
        let err8 = { instancePath: instancePath + "/at", schemaPath: "survey.json#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema127.type, parentSchema: schema127, data: data1 };
        vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
      }
    }
    if (data.lists !== void 0) {
      let data2 = data.lists;
      if (Array.isArray(data2)) {
        let len0 = data2.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data3 = data2[i0];
          if (typeof data3 != "string") {
            let err9 = { instancePath: instancePath + "/lists/" + i0, schemaPath: "#/properties/lists/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema191.properties.lists.items.type, parentSchema: schema191.properties.lists.items, data: data3 };
            vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
          }
          if (!(data3 === "volumes" || data3 === "servers")) {
            let err10 = { instancePath: instancePath + "/lists/" + i0, schemaPath: "#/properties/lists/items/enum", keyword: "enum", params: { allowedValues: schema191.properties.lists.items.enum }, message: "must be equal to one of the allowed values", schema: schema191.properties.lists.items.enum, parentSchema: schema191.properties.lists.items, data: data3 };
            vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
          }
        }
        let i1 = data2.length, j0;
        if (i1 > 1) {
          let indices0 = {};
          for (; i1--; ) {
            let item0 = data2[i1];
            if (typeof item0 == "string") {
              if (typeof indices0[item0] == "number") {
                j0 = indices0[item0];
                let err11 = { instancePath: instancePath + "/lists", schemaPath: "#/properties/lists/uniqueItems", keyword: "uniqueItems", params: { i: i1, j: j0 }, message: "must NOT have duplicate items (items ## " + j0 + " and " + i1 + " are identical)", schema: !0, parentSchema: schema191.properties.lists, data: data2 };
                vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
                break;
              }
              indices0[item0] = i1;
            }
          }
        }
      } else {
        let err12 = { instancePath: instancePath + "/lists", schemaPath: "#/properties/lists/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema191.properties.lists.type, parentSchema: schema191.properties.lists, data: data2 };
        vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
      }
    }
    if (data.volumes !== void 0) {
      let data4 = data.volumes;
      if (Array.isArray(data4)) {
        let len1 = data4.length;
        for (let i2 = 0; i2 < len1; i2++) {
          let data5 = data4[i2];
          if (data5 && typeof data5 == "object" && !Array.isArray(data5)) {
            if (data5.size === void 0) {
              let err13 = { instancePath: instancePath + "/volumes/" + i2, schemaPath: "#/properties/volumes/items/required", keyword: "required", params: { missingProperty: "size" }, message: "must have required property 'size'", schema: schema191.properties.volumes.items.required, parentSchema: schema191.properties.volumes.items, data: data5 };
              vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
            }
            for (let key1 in data5)
              if (!(key1 === "id" || key1 === "name" || key1 === "size" || key1 === "tier" || key1 === "site" || key1 === "servers" || key1 === "server" || key1 === "boot")) {
                let err14 = { instancePath: instancePath + "/volumes/" + i2, schemaPath: "#/properties/volumes/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema191.properties.volumes.items, data: data5 };
                vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
              }
            if (data5.id !== void 0) {
              let data6 = data5.id;
              if (typeof data6 == "string") {
                if (func10(data6) > 255) {
                  let err15 = { instancePath: instancePath + "/volumes/" + i2 + "/id", schemaPath: "survey.json#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data6 };
                  vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
                }
                if (func10(data6) < 1) {
                  let err16 = { instancePath: instancePath + "/volumes/" + i2 + "/id", schemaPath: "survey.json#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data6 };
                  vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
                }
                if (!pattern58.test(data6)) {
                  let err17 = { instancePath: instancePath + "/volumes/" + i2 + "/id", schemaPath: "survey.json#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data6 };
                  vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
                }
              } else {
                let err18 = { instancePath: instancePath + "/volumes/" + i2 + "/id", schemaPath: "survey.json#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data6 };
                vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
              }
            }
            if (data5.name !== void 0) {
              let data7 = data5.name;
              if (typeof data7 == "string") {
                if (func10(data7) > 255) {
                  let err19 = { instancePath: instancePath + "/volumes/" + i2 + "/name", schemaPath: "survey.json#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data7 };
                  vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
                }
                if (func10(data7) < 1) {
                  let err20 = { instancePath: instancePath + "/volumes/" + i2 + "/name", schemaPath: "survey.json#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data7 };
                  vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
                }
                if (!pattern58.test(data7)) {
                  let err21 = { instancePath: instancePath + "/volumes/" + i2 + "/name", schemaPath: "survey.json#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data7 };
                  vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
                }
              } else {
                let err22 = { instancePath: instancePath + "/volumes/" + i2 + "/name", schemaPath: "survey.json#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data7 };
                vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
              }
            }
            if (data5.size !== void 0) {
              let data8 = data5.size;
              if (typeof data8 == "string") {
                if (!pattern62.test(data8)) {
                  let err23 = { instancePath: instancePath + "/volumes/" + i2 + "/size", schemaPath: "survey.json#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data8 };
                  vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
                }
              } else {
                let err24 = { instancePath: instancePath + "/volumes/" + i2 + "/size", schemaPath: "survey.json#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data8 };
                vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
              }
            }
            if (data5.tier !== void 0) {
              let data9 = data5.tier;
              if (typeof data9 == "string") {
                if (func10(data9) > 255) {
                  let err25 = { instancePath: instancePath + "/volumes/" + i2 + "/tier", schemaPath: "survey.json#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data9 };
                  vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
                }
                if (func10(data9) < 1) {
                  let err26 = { instancePath: instancePath + "/volumes/" + i2 + "/tier", schemaPath: "survey.json#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data9 };
                  vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
                }
                if (!pattern58.test(data9)) {
                  let err27 = { instancePath: instancePath + "/volumes/" + i2 + "/tier", schemaPath: "survey.json#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data9 };
                  vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
                }
              } else {
                let err28 = { instancePath: instancePath + "/volumes/" + i2 + "/tier", schemaPath: "survey.json#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data9 };
                vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
              }
            }
            if (data5.site !== void 0) {
              let data10 = data5.site;
              if (typeof data10 == "string") {
                if (func10(data10) > 255) {
                  let err29 = { instancePath: instancePath + "/volumes/" + i2 + "/site", schemaPath: "survey.json#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data10 };
                  vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
                }
                if (func10(data10) < 1) {
                  let err30 = { instancePath: instancePath + "/volumes/" + i2 + "/site", schemaPath: "survey.json#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data10 };
                  vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
                }
                if (!pattern58.test(data10)) {
                  let err31 = { instancePath: instancePath + "/volumes/" + i2 + "/site", schemaPath: "survey.json#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data10 };
                  vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
                }
              } else {
                let err32 = { instancePath: instancePath + "/volumes/" + i2 + "/site", schemaPath: "survey.json#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data10 };
                vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
              }
            }
            if (data5.servers !== void 0) {
              let data11 = data5.servers;
              if (Array.isArray(data11)) {
                let len2 = data11.length;
                for (let i3 = 0; i3 < len2; i3++) {
                  let data12 = data11[i3];
                  if (typeof data12 == "string") {
                    if (func10(data12) > 255) {
                      let err33 = { instancePath: instancePath + "/volumes/" + i2 + "/servers/" + i3, schemaPath: "survey.json#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data12 };
                      vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
                    }
                    if (func10(data12) < 1) {
                      let err34 = { instancePath: instancePath + "/volumes/" + i2 + "/servers/" + i3, schemaPath: "survey.json#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data12 };
                      vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
                    }
                    if (!pattern58.test(data12)) {
                      let err35 = { instancePath: instancePath + "/volumes/" + i2 + "/servers/" + i3, schemaPath: "survey.json#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data12 };
                      vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
                    }
                  } else {
                    let err36 = { instancePath: instancePath + "/volumes/" + i2 + "/servers/" + i3, schemaPath: "survey.json#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data12 };
                    vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
                  }
                }
                let i4 = data11.length, j1;
                if (i4 > 1) {
                  outer0: for (; i4--; )
                    for (j1 = i4; j1--; )
                      if (func0(data11[i4], data11[j1])) {
                        let err37 = { instancePath: instancePath + "/volumes/" + i2 + "/servers", schemaPath: "#/properties/volumes/items/properties/servers/uniqueItems", keyword: "uniqueItems", params: { i: i4, j: j1 }, message: "must NOT have duplicate items (items ## " + j1 + " and " + i4 + " are identical)", schema: !0, parentSchema: schema191.properties.volumes.items.properties.servers, data: data11 };
                        vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
                        break outer0;
                      }
                }
              } else {
                let err38 = { instancePath: instancePath + "/volumes/" + i2 + "/servers", schemaPath: "#/properties/volumes/items/properties/servers/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema191.properties.volumes.items.properties.servers.type, parentSchema: schema191.properties.volumes.items.properties.servers, data: data11 };
                vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
              }
            }
            if (data5.server !== void 0) {
              let data13 = data5.server;
              if (typeof data13 == "string") {
                if (func10(data13) > 255) {
                  let err39 = { instancePath: instancePath + "/volumes/" + i2 + "/server", schemaPath: "survey.json#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data13 };
                  vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
                }
                if (func10(data13) < 1) {
                  let err40 = { instancePath: instancePath + "/volumes/" + i2 + "/server", schemaPath: "survey.json#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data13 };
                  vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
                }
                if (!pattern58.test(data13)) {
                  let err41 = { instancePath: instancePath + "/volumes/" + i2 + "/server", schemaPath: "survey.json#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data13 };
                  vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
                }
              } else {
                let err42 = { instancePath: instancePath + "/volumes/" + i2 + "/server", schemaPath: "survey.json#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data13 };
                vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
              }
            }
            if (data5.boot !== void 0) {
              let data14 = data5.boot;
              if (typeof data14 != "boolean") {
                let err43 = { instancePath: instancePath + "/volumes/" + i2 + "/boot", schemaPath: "#/properties/volumes/items/properties/boot/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema191.properties.volumes.items.properties.boot.type, parentSchema: schema191.properties.volumes.items.properties.boot, data: data14 };
                vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
              }
            }
          } else {
            let err44 = { instancePath: instancePath + "/volumes/" + i2, schemaPath: "#/properties/volumes/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema191.properties.volumes.items.type, parentSchema: schema191.properties.volumes.items, data: data5 };
            vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
          }
        }
      } else {
        let err45 = { instancePath: instancePath + "/volumes", schemaPath: "#/properties/volumes/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema191.properties.volumes.type, parentSchema: schema191.properties.volumes, data: data4 };
        vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
      }
    }
    if (data.servers !== void 0) {
      let data15 = data.servers;
      if (Array.isArray(data15)) {
        let len3 = data15.length;
        for (let i5 = 0; i5 < len3; i5++) {
          let data16 = data15[i5];
          if (data16 && typeof data16 == "object" && !Array.isArray(data16)) {
            for (let key2 in data16)
              if (!(key2 === "id" || key2 === "name" || key2 === "site" || key2 === "type" || key2 === "power" || key2 === "boot")) {
                let err46 = { instancePath: instancePath + "/servers/" + i5, schemaPath: "#/properties/servers/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema191.properties.servers.items, data: data16 };
                vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
              }
            if (data16.id !== void 0) {
              let data17 = data16.id;
              if (typeof data17 == "string") {
                if (func10(data17) > 255) {
                  let err47 = { instancePath: instancePath + "/servers/" + i5 + "/id", schemaPath: "survey.json#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data17 };
                  vErrors === null ? vErrors = [err47] : vErrors.push(err47), errors++;
                }
                if (func10(data17) < 1) {
                  let err48 = { instancePath: instancePath + "/servers/" + i5 + "/id", schemaPath: "survey.json#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data17 };
                  vErrors === null ? vErrors = [err48] : vErrors.push(err48), errors++;
                }
                if (!pattern58.test(data17)) {
                  let err49 = { instancePath: instancePath + "/servers/" + i5 + "/id", schemaPath: "survey.json#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data17 };
                  vErrors === null ? vErrors = [err49] : vErrors.push(err49), errors++;
                }
              } else {
                let err50 = { instancePath: instancePath + "/servers/" + i5 + "/id", schemaPath: "survey.json#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data17 };
                vErrors === null ? vErrors = [err50] : vErrors.push(err50), errors++;
              }
            }
            if (data16.name !== void 0) {
              let data18 = data16.name;
              if (typeof data18 == "string") {
                if (func10(data18) > 255) {
                  let err51 = { instancePath: instancePath + "/servers/" + i5 + "/name", schemaPath: "survey.json#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data18 };
                  vErrors === null ? vErrors = [err51] : vErrors.push(err51), errors++;
                }
                if (func10(data18) < 1) {
                  let err52 = { instancePath: instancePath + "/servers/" + i5 + "/name", schemaPath: "survey.json#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data18 };
                  vErrors === null ? vErrors = [err52] : vErrors.push(err52), errors++;
                }
                if (!pattern58.test(data18)) {
                  let err53 = { instancePath: instancePath + "/servers/" + i5 + "/name", schemaPath: "survey.json#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data18 };
                  vErrors === null ? vErrors = [err53] : vErrors.push(err53), errors++;
                }
              } else {
                let err54 = { instancePath: instancePath + "/servers/" + i5 + "/name", schemaPath: "survey.json#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data18 };
                vErrors === null ? vErrors = [err54] : vErrors.push(err54), errors++;
              }
            }
            if (data16.site !== void 0) {
              let data19 = data16.site;
              if (typeof data19 == "string") {
                if (func10(data19) > 255) {
                  let err55 = { instancePath: instancePath + "/servers/" + i5 + "/site", schemaPath: "survey.json#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data19 };
                  vErrors === null ? vErrors = [err55] : vErrors.push(err55), errors++;
                }
                if (func10(data19) < 1) {
                  let err56 = { instancePath: instancePath + "/servers/" + i5 + "/site", schemaPath: "survey.json#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data19 };
                  vErrors === null ? vErrors = [err56] : vErrors.push(err56), errors++;
                }
                if (!pattern58.test(data19)) {
                  let err57 = { instancePath: instancePath + "/servers/" + i5 + "/site", schemaPath: "survey.json#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data19 };
                  vErrors === null ? vErrors = [err57] : vErrors.push(err57), errors++;
                }
              } else {
                let err58 = { instancePath: instancePath + "/servers/" + i5 + "/site", schemaPath: "survey.json#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data19 };
                vErrors === null ? vErrors = [err58] : vErrors.push(err58), errors++;
              }
            }
            if (data16.type !== void 0) {
              let data20 = data16.type;
              if (typeof data20 == "string") {
                if (func10(data20) > 255) {
                  let err59 = { instancePath: instancePath + "/servers/" + i5 + "/type", schemaPath: "survey.json#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data20 };
                  vErrors === null ? vErrors = [err59] : vErrors.push(err59), errors++;
                }
                if (func10(data20) < 1) {
                  let err60 = { instancePath: instancePath + "/servers/" + i5 + "/type", schemaPath: "survey.json#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data20 };
                  vErrors === null ? vErrors = [err60] : vErrors.push(err60), errors++;
                }
                if (!pattern58.test(data20)) {
                  let err61 = { instancePath: instancePath + "/servers/" + i5 + "/type", schemaPath: "survey.json#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data20 };
                  vErrors === null ? vErrors = [err61] : vErrors.push(err61), errors++;
                }
              } else {
                let err62 = { instancePath: instancePath + "/servers/" + i5 + "/type", schemaPath: "survey.json#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data20 };
                vErrors === null ? vErrors = [err62] : vErrors.push(err62), errors++;
              }
            }
            if (data16.power !== void 0) {
              let data21 = data16.power;
              if (typeof data21 != "string") {
                let err63 = { instancePath: instancePath + "/servers/" + i5 + "/power", schemaPath: "#/properties/servers/items/properties/power/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema191.properties.servers.items.properties.power.type, parentSchema: schema191.properties.servers.items.properties.power, data: data21 };
                vErrors === null ? vErrors = [err63] : vErrors.push(err63), errors++;
              }
              if (!(data21 === "running" || data21 === "stopped")) {
                let err64 = { instancePath: instancePath + "/servers/" + i5 + "/power", schemaPath: "#/properties/servers/items/properties/power/enum", keyword: "enum", params: { allowedValues: schema191.properties.servers.items.properties.power.enum }, message: "must be equal to one of the allowed values", schema: schema191.properties.servers.items.properties.power.enum, parentSchema: schema191.properties.servers.items.properties.power, data: data21 };
                vErrors === null ? vErrors = [err64] : vErrors.push(err64), errors++;
              }
            }
            if (data16.boot !== void 0) {
              let data22 = data16.boot;
              if (typeof data22 == "string") {
                if (func10(data22) > 255) {
                  let err65 = { instancePath: instancePath + "/servers/" + i5 + "/boot", schemaPath: "survey.json#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data22 };
                  vErrors === null ? vErrors = [err65] : vErrors.push(err65), errors++;
                }
                if (func10(data22) < 1) {
                  let err66 = { instancePath: instancePath + "/servers/" + i5 + "/boot", schemaPath: "survey.json#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data22 };
                  vErrors === null ? vErrors = [err66] : vErrors.push(err66), errors++;
                }
                if (!pattern58.test(data22)) {
                  let err67 = { instancePath: instancePath + "/servers/" + i5 + "/boot", schemaPath: "survey.json#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data22 };
                  vErrors === null ? vErrors = [err67] : vErrors.push(err67), errors++;
                }
              } else {
                let err68 = { instancePath: instancePath + "/servers/" + i5 + "/boot", schemaPath: "survey.json#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data22 };
                vErrors === null ? vErrors = [err68] : vErrors.push(err68), errors++;
              }
            }
          } else {
            let err69 = { instancePath: instancePath + "/servers/" + i5, schemaPath: "#/properties/servers/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema191.properties.servers.items.type, parentSchema: schema191.properties.servers.items, data: data16 };
            vErrors === null ? vErrors = [err69] : vErrors.push(err69), errors++;
          }
        }
      } else {
        let err70 = { instancePath: instancePath + "/servers", schemaPath: "#/properties/servers/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema191.properties.servers.type, parentSchema: schema191.properties.servers, data: data15 };
        vErrors === null ? vErrors = [err70] : vErrors.push(err70), errors++;
      }
    }
  } else {
    let err71 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema191.type, parentSchema: schema191, data };
    vErrors === null ? vErrors = [err71] : vErrors.push(err71), errors++;
  }
  return validate165.errors = vErrors, errors === 0;
}
validate165.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var rule_pack = validate166, schema205 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "rule-pack.json", title: "RulePackFile", description: "A rule pack: rules with their parameters, limits and scope.", type: "object", additionalProperties: !1, properties: { use: { type: "array", items: { $ref: "common.json#/$defs/name" }, examples: [["starter"]], description: "Packs by name: those that ship with Ullage, and those that `packs` in ullage.yaml lists, which override them by name. What follows adds to them or overrides them." }, rules: { type: "array", items: { $ref: "#/$defs/entry" }, description: "The rules of this pack." } }, $defs: { names: { type: "array", minItems: 1, items: { $ref: "common.json#/$defs/name" } }, scope: { title: "ScopeDeclaration", type: "object", additionalProperties: !1, description: "What the rule applies to; everything if left out. All keys given must match.", properties: { teams: { $ref: "#/$defs/names", description: "Only what belongs to one of these teams.", examples: [["imagery"]] }, sites: { $ref: "#/$defs/names", description: "Only what is at one of these sites.", examples: [["north-quay"]] }, tiers: { $ref: "#/$defs/names", description: "Only volumes of one of these tiers.", examples: [["bulk"]] }, labels: { type: "object", propertyNames: { $ref: "common.json#/$defs/name" }, additionalProperties: { type: ["string", "array"], items: { type: "string" }, minItems: 1 }, description: "Only what has each of these labels, with the value or one of the values." } } }, entry: { title: "RuleEntry", type: "object", required: ["rule"], examples: [{ rule: "no-shrink" }], discriminator: { propertyName: "rule" }, oneOf: [{ title: "MaxMonthlySpendEntry", type: "object", description: "A team, a site, a label or the whole estate whose monthly cost is over its limit.", additionalProperties: !1, required: ["rule", "limit"], properties: { rule: { const: "max-monthly-spend", description: "A team, a site, a label or the whole estate whose monthly cost is over its limit." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, limit: { $ref: "common.json#/$defs/amount", description: "The highest total monthly cost of everything in scope. Exactly this amount is allowed." }, each: { type: "string", enum: ["team", "site"], description: "Applies the limit to each team, or each site, in scope separately instead of to their total." }, "warn-from": { type: "number", exclusiveMinimum: 0, maximum: 1, description: "The share of the limit from which a warning is given." }, from: { $ref: "common.json#/$defs/date", description: "The first day on which the limit applies." }, until: { $ref: "common.json#/$defs/date", description: "The last day on which the limit applies." } } }, { title: "SpendUnderALimitEntry", type: "object", description: "Monthly cost that no spend limit covers: of a team, or of no team at all; and a server that names no type where the price list has server types, since its cost is then counted nowhere.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "spend-under-a-limit", description: "Monthly cost that no spend limit covers: of a team, or of no team at all; and a server that names no type where the price list has server types, since its cost is then counted nowhere." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "MinimumHeadroomEntry", type: "object", description: "Less headroom than required in a site's quota, a server's attachment slots, a volume group or a file system; or a file system that, by its readings, will be full too soon.", additionalProperties: !1, required: ["rule", "of"], properties: { rule: { const: "minimum-headroom", description: "Less headroom than required in a site's quota, a server's attachment slots, a volume group or a file system; or a file system that, by its readings, will be full too soon." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, of: { type: "string", enum: ["quota", "attachment-slots", "volume-group", "file-system"], description: "The layer that must keep headroom. A file system is checked against its readings; without any, its share and size are not checked." }, share: { type: "number", minimum: 0, maximum: 1, description: "The smallest share of the capacity that must be free. Exactly this share is enough." }, size: { $ref: "common.json#/$defs/size", description: "The smallest size that must be free, at layers measured in bytes." }, count: { type: "integer", minimum: 0, description: "The smallest number of volumes or slots that must be free, at layers that are counted." }, days: { type: "integer", minimum: 1, description: "The smallest number of days, from the day of the judgement, until a file system may be full by its readings: what counts is the day by which 5 in 100 of the futures drawn from them are full, so that the rule errs early. Exactly this many are enough." } } }, { title: "NoShrinkEntry", type: "object", description: "A volume, a volume group or a file system made smaller in exact bytes: also across a rename, a change of unit, or a deletion and re-creation in its place.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "no-shrink", description: "A volume, a volume group or a file system made smaller in exact bytes: also across a rename, a change of unit, or a deletion and re-creation in its place." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, "allow-file-systems": { type: "array", items: { type: "string", enum: ["ext2", "ext3", "ext4", "btrfs", "ntfs", "swap"] }, description: "The types of file system that may be made smaller, among those whose own tools can do it." } } }, { title: "BootVolumeStaysEntry", type: "object", description: "A boot volume detached, swapped, moved, deleted, added to a volume group or given a new file system while its server runs.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "boot-volume-stays", description: "A boot volume detached, swapped, moved, deleted, added to a volume group or given a new file system while its server runs." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "ExclusiveAttachmentEntry", type: "object", description: "One volume attached to several servers, unless it is shareable, within its tier's limit, and holds a cluster-aware file system.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "exclusive-attachment", description: "One volume attached to several servers, unless it is shareable, within its tier's limit, and holds a cluster-aware file system." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "GroupTravelsWholeEntry", type: "object", description: "A volume group with members on different servers, or with some members attached and some not.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "group-travels-whole", description: "A volume group with members on different servers, or with some members attached and some not." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "SameSiteEntry", type: "object", description: "A volume attached to a server at another site.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "same-site", description: "A volume attached to a server at another site." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "GrowthStepEntry", type: "object", description: "A volume made larger in one change by more than a set factor or a set size.", additionalProperties: !1, required: ["rule"], minProperties: 2, properties: { rule: { const: "growth-step", description: "A volume made larger in one change by more than a set factor or a set size." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, times: { type: "number", minimum: 1, description: "The largest factor by which a volume may grow in one change." }, by: { $ref: "common.json#/$defs/size", description: "The largest size by which a volume may grow in one change." } } }, { title: "DetachedVolumeOwnedEntry", type: "object", description: "A volume that no server uses and that is still billed, unattached or attached only to stopped servers that cost nothing, without an owner, a reason or a retention date, or kept past that date.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "detached-volume-owned", description: "A volume that no server uses and that is still billed, unattached or attached only to stopped servers that cost nothing, without an owner, a reason or a retention date, or kept past that date." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, "at-most": { type: "integer", minimum: 1, description: "How many days ahead a retention date may be at most." }, grace: { type: "integer", minimum: 0, default: 0, description: "How many days past the retention date are tolerated." } } }, { title: "DeletionPreparedEntry", type: "object", description: "The deletion of a volume that is attached on main, is protected, is to be kept longer, or leaves no record of its reason and of a recent enough backup; likewise a move to another site, and a file system deleted or reformatted on volumes that stay. Warns when a volume joins a group, or gets its first file system, and may already hold data.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "deletion-prepared", description: "The deletion of a volume that is attached on main, is protected, is to be kept longer, or leaves no record of its reason and of a recent enough backup; likewise a move to another site, and a file system deleted or reformatted on volumes that stay. Warns when a volume joins a group, or gets its first file system, and may already hold data." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, "backup-within": { type: "integer", minimum: 0, description: "The greatest age, in days, of the backup on record on the day of the judgement; if left out, no backup is required." }, "attached-allowed": { type: "boolean", default: !1, description: "Whether a volume that is still attached on main may be deleted." } } }, { title: "DestructiveChangesFewEntry", type: "object", description: "More than a set number of changes in one branch that cannot be undone.", additionalProperties: !1, required: ["rule", "at-most"], properties: { rule: { const: "destructive-changes-few", description: "More than a set number of changes in one branch that cannot be undone." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, "at-most": { type: "integer", minimum: 0, description: "How many volumes, groups and file systems one branch may delete, shrink or reformat. Exactly this many are allowed; what is lost together with its volume or group counts once." } } }, { title: "SurveyedAsDeclaredEntry", type: "object", description: "A change that destroys, detaches, hands over or grows something which, by the surveys on main, is otherwise than main declares it or holds what main does not declare, or of which the survey is too old or missing; a server that would take along what nobody declared; and something declared as existing that a survey does not show.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "surveyed-as-declared", description: "A change that destroys, detaches, hands over or grows something which, by the surveys on main, is otherwise than main declares it or holds what main does not declare, or of which the survey is too old or missing; a server that would take along what nobody declared; and something declared as existing that a survey does not show." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, within: { type: "integer", minimum: 0, description: "How many days old a survey may be." }, "too-old": { enum: ["error", "warning", "note"], description: "The level of a survey that is too old, up to the entry's own.", default: "warning" }, missing: { enum: ["error", "warning", "note"], description: "The level of a missing survey, up to the entry's own. As long as main has no survey at all, a missing one is told only where this is `error`.", default: "note" } } }, { title: "OrderOfStepsEntry", type: "object", description: "Changes that no order of steps carries out: steps that wait for one another in a circle, an attachment for which no slot is free on the way, a site's quota exceeded on the way, the contents of a volume group that would have to be moved between sites.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "order-of-steps", description: "Changes that no order of steps carries out: steps that wait for one another in a circle, an attachment for which no slot is free on the way, a site's quota exceeded on the way, the contents of a volume group that would have to be moved between sites." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "FreezeEntry", type: "object", description: "Changes that cannot be undone, or any changes, within a freeze period.", additionalProperties: !1, required: ["rule"], minProperties: 2, properties: { rule: { const: "freeze", description: "Changes that cannot be undone, or any changes, within a freeze period." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, from: { $ref: "common.json#/$defs/date", description: "The first day of the freeze." }, until: { $ref: "common.json#/$defs/date", description: "The last day of the freeze." }, "all-changes": { type: "boolean", default: !1, description: "Whether every change of storage is refused, not only those that cannot be undone." }, reason: { $ref: "common.json#/$defs/sentence", description: "Why there is a freeze; shown with each finding." } } }, { title: "GrowthFollowedThroughEntry", type: "object", description: "Provisioned capacity that is left unallocated: a volume group with too much allocated to no file system, an attached volume in no group and without a file system, a file system smaller than the volume under it.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "growth-followed-through", description: "Provisioned capacity that is left unallocated: a volume group with too much allocated to no file system, an attached volume in no group and without a file system, a file system smaller than the volume under it." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; warning if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, "idle-share": { type: "number", minimum: 0, maximum: 1, default: 0.25, description: "The largest share of the provisioned capacity of a volume group that may be unallocated. Exactly this share is allowed." }, "idle-size": { $ref: "common.json#/$defs/size", default: "1 GiB", description: "The size that may be unallocated at any one place, for a partition table, a group's metadata or a last extent. Exactly this size is allowed." } } }, { title: "NamingEntry", type: "object", description: "A name of a server, a volume, a volume group or a mount point that breaks the estate's pattern.", additionalProperties: !1, required: ["rule"], minProperties: 2, properties: { rule: { const: "naming", description: "A name of a server, a volume, a volume group or a mount point that breaks the estate's pattern." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, server: { type: "string", minLength: 1, description: "The pattern (RE2) that a server's name must match from end to end." }, volume: { type: "string", minLength: 1, description: "The pattern (RE2) that a volume's name must match from end to end." }, "volume-group": { type: "string", minLength: 1, description: "The pattern (RE2) that a volume group's name must match from end to end." }, mount: { type: "string", minLength: 1, description: "The pattern (RE2) that the mount point of a file system must match from end to end." } } }, { title: "NoStaleRenameEntry", type: "object", description: "An old name under formerly: that another thing has taken up since, or that nothing on main has.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "no-stale-rename", description: "An old name under formerly: that another thing has taken up since, or that nothing on main has." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; warning if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "ShapeEntry", type: "object", description: "Whatever does not match a JSON Schema of your own: a rule without code, for one kind of thing or for changes.", additionalProperties: !1, required: ["rule", "schema", "of"], properties: { rule: { const: "shape", description: "Whatever does not match a JSON Schema of your own: a rule without code, for one kind of thing or for changes." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, of: { type: "string", enum: ["server", "volume", "volume-group", "file-system", "change"], description: "What is checked against the schema, each by itself." }, kinds: { type: "array", minItems: 1, items: { type: "string", enum: ["server-created", "server-adopted", "server-renamed", "server-changed-id", "server-changed-team", "server-moved-site", "server-changed-type", "server-started", "server-stopped", "boot-swapped", "server-edited", "server-deleted", "volume-created", "volume-adopted", "volume-re-created", "volume-renamed", "volume-changed-id", "volume-changed-team", "volume-moved-site", "volume-moved-tier", "volume-grown", "volume-shrunk", "volume-corrected", "volume-unprotected", "volume-edited", "handed-over", "detached", "attached", "attachment-adopted", "volume-deleted", "group-created", "group-adopted", "group-renamed", "member-left", "member-joined", "member-adopted", "group-edited", "group-deleted", "file-system-created", "file-system-adopted", "file-system-remounted", "file-system-edited", "file-system-remade", "file-system-grown", "file-system-shrunk", "file-system-corrected", "file-system-deleted"] }, description: "Only changes of these kinds; all kinds if left out. What is only declared as existing counts as created, attached or joined, too. Only with of: change." }, schema: { type: "object", description: "A JSON Schema (2020-12) that each must satisfy. It sees the keys of the estate files, sizes as numbers under size-gib, and servers, volumes or volume-group for what it is attached to or part of; for a change: change, subject, before and after. Patterns are RE2; $ref stays within the schema." }, message: { $ref: "common.json#/$defs/sentence", description: "The beginning of the message about what does not match." } } }, { title: "TierBoundsEntry", type: "object", description: "A volume whose size its tier does not offer, or a server that needs more IOPS than its volumes' tiers provide.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "tier-bounds", description: "A volume whose size its tier does not offer, or a server that needs more IOPS than its volumes' tiers provide." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "PolicyApartEntry", type: "object", description: "A looser policy and a change of storage in one branch.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "policy-apart", description: "A looser policy and a change of storage in one branch." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }] } } }, schema207 = { title: "RuleEntry", type: "object", required: ["rule"], examples: [{ rule: "no-shrink" }], discriminator: { propertyName: "rule" }, oneOf: [{ title: "MaxMonthlySpendEntry", type: "object", description: "A team, a site, a label or the whole estate whose monthly cost is over its limit.", additionalProperties: !1, required: ["rule", "limit"], properties: { rule: { const: "max-monthly-spend", description: "A team, a site, a label or the whole estate whose monthly cost is over its limit." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, limit: { $ref: "common.json#/$defs/amount", description: "The highest total monthly cost of everything in scope. Exactly this amount is allowed." }, each: { type: "string", enum: ["team", "site"], description: "Applies the limit to each team, or each site, in scope separately instead of to their total." }, "warn-from": { type: "number", exclusiveMinimum: 0, maximum: 1, description: "The share of the limit from which a warning is given." }, from: { $ref: "common.json#/$defs/date", description: "The first day on which the limit applies." }, until: { $ref: "common.json#/$defs/date", description: "The last day on which the limit applies." } } }, { title: "SpendUnderALimitEntry", type: "object", description: "Monthly cost that no spend limit covers: of a team, or of no team at all; and a server that names no type where the price list has server types, since its cost is then counted nowhere.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "spend-under-a-limit", description: "Monthly cost that no spend limit covers: of a team, or of no team at all; and a server that names no type where the price list has server types, since its cost is then counted nowhere." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "MinimumHeadroomEntry", type: "object", description: "Less headroom than required in a site's quota, a server's attachment slots, a volume group or a file system; or a file system that, by its readings, will be full too soon.", additionalProperties: !1, required: ["rule", "of"], properties: { rule: { const: "minimum-headroom", description: "Less headroom than required in a site's quota, a server's attachment slots, a volume group or a file system; or a file system that, by its readings, will be full too soon." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, of: { type: "string", enum: ["quota", "attachment-slots", "volume-group", "file-system"], description: "The layer that must keep headroom. A file system is checked against its readings; without any, its share and size are not checked." }, share: { type: "number", minimum: 0, maximum: 1, description: "The smallest share of the capacity that must be free. Exactly this share is enough." }, size: { $ref: "common.json#/$defs/size", description: "The smallest size that must be free, at layers measured in bytes." }, count: { type: "integer", minimum: 0, description: "The smallest number of volumes or slots that must be free, at layers that are counted." }, days: { type: "integer", minimum: 1, description: "The smallest number of days, from the day of the judgement, until a file system may be full by its readings: what counts is the day by which 5 in 100 of the futures drawn from them are full, so that the rule errs early. Exactly this many are enough." } } }, { title: "NoShrinkEntry", type: "object", description: "A volume, a volume group or a file system made smaller in exact bytes: also across a rename, a change of unit, or a deletion and re-creation in its place.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "no-shrink", description: "A volume, a volume group or a file system made smaller in exact bytes: also across a rename, a change of unit, or a deletion and re-creation in its place." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, "allow-file-systems": { type: "array", items: { type: "string", enum: ["ext2", "ext3", "ext4", "btrfs", "ntfs", "swap"] }, description: "The types of file system that may be made smaller, among those whose own tools can do it." } } }, { title: "BootVolumeStaysEntry", type: "object", description: "A boot volume detached, swapped, moved, deleted, added to a volume group or given a new file system while its server runs.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "boot-volume-stays", description: "A boot volume detached, swapped, moved, deleted, added to a volume group or given a new file system while its server runs." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "ExclusiveAttachmentEntry", type: "object", description: "One volume attached to several servers, unless it is shareable, within its tier's limit, and holds a cluster-aware file system.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "exclusive-attachment", description: "One volume attached to several servers, unless it is shareable, within its tier's limit, and holds a cluster-aware file system." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "GroupTravelsWholeEntry", type: "object", description: "A volume group with members on different servers, or with some members attached and some not.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "group-travels-whole", description: "A volume group with members on different servers, or with some members attached and some not." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "SameSiteEntry", type: "object", description: "A volume attached to a server at another site.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "same-site", description: "A volume attached to a server at another site." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "GrowthStepEntry", type: "object", description: "A volume made larger in one change by more than a set factor or a set size.", additionalProperties: !1, required: ["rule"], minProperties: 2, properties: { rule: { const: "growth-step", description: "A volume made larger in one change by more than a set factor or a set size." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, times: { type: "number", minimum: 1, description: "The largest factor by which a volume may grow in one change." }, by: { $ref: "common.json#/$defs/size", description: "The largest size by which a volume may grow in one change." } } }, { title: "DetachedVolumeOwnedEntry", type: "object", description: "A volume that no server uses and that is still billed, unattached or attached only to stopped servers that cost nothing, without an owner, a reason or a retention date, or kept past that date.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "detached-volume-owned", description: "A volume that no server uses and that is still billed, unattached or attached only to stopped servers that cost nothing, without an owner, a reason or a retention date, or kept past that date." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, "at-most": { type: "integer", minimum: 1, description: "How many days ahead a retention date may be at most." }, grace: { type: "integer", minimum: 0, default: 0, description: "How many days past the retention date are tolerated." } } }, { title: "DeletionPreparedEntry", type: "object", description: "The deletion of a volume that is attached on main, is protected, is to be kept longer, or leaves no record of its reason and of a recent enough backup; likewise a move to another site, and a file system deleted or reformatted on volumes that stay. Warns when a volume joins a group, or gets its first file system, and may already hold data.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "deletion-prepared", description: "The deletion of a volume that is attached on main, is protected, is to be kept longer, or leaves no record of its reason and of a recent enough backup; likewise a move to another site, and a file system deleted or reformatted on volumes that stay. Warns when a volume joins a group, or gets its first file system, and may already hold data." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, "backup-within": { type: "integer", minimum: 0, description: "The greatest age, in days, of the backup on record on the day of the judgement; if left out, no backup is required." }, "attached-allowed": { type: "boolean", default: !1, description: "Whether a volume that is still attached on main may be deleted." } } }, { title: "DestructiveChangesFewEntry", type: "object", description: "More than a set number of changes in one branch that cannot be undone.", additionalProperties: !1, required: ["rule", "at-most"], properties: { rule: { const: "destructive-changes-few", description: "More than a set number of changes in one branch that cannot be undone." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, "at-most": { type: "integer", minimum: 0, description: "How many volumes, groups and file systems one branch may delete, shrink or reformat. Exactly this many are allowed; what is lost together with its volume or group counts once." } } }, { title: "SurveyedAsDeclaredEntry", type: "object", description: "A change that destroys, detaches, hands over or grows something which, by the surveys on main, is otherwise than main declares it or holds what main does not declare, or of which the survey is too old or missing; a server that would take along what nobody declared; and something declared as existing that a survey does not show.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "surveyed-as-declared", description: "A change that destroys, detaches, hands over or grows something which, by the surveys on main, is otherwise than main declares it or holds what main does not declare, or of which the survey is too old or missing; a server that would take along what nobody declared; and something declared as existing that a survey does not show." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, within: { type: "integer", minimum: 0, description: "How many days old a survey may be." }, "too-old": { enum: ["error", "warning", "note"], description: "The level of a survey that is too old, up to the entry's own.", default: "warning" }, missing: { enum: ["error", "warning", "note"], description: "The level of a missing survey, up to the entry's own. As long as main has no survey at all, a missing one is told only where this is `error`.", default: "note" } } }, { title: "OrderOfStepsEntry", type: "object", description: "Changes that no order of steps carries out: steps that wait for one another in a circle, an attachment for which no slot is free on the way, a site's quota exceeded on the way, the contents of a volume group that would have to be moved between sites.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "order-of-steps", description: "Changes that no order of steps carries out: steps that wait for one another in a circle, an attachment for which no slot is free on the way, a site's quota exceeded on the way, the contents of a volume group that would have to be moved between sites." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "FreezeEntry", type: "object", description: "Changes that cannot be undone, or any changes, within a freeze period.", additionalProperties: !1, required: ["rule"], minProperties: 2, properties: { rule: { const: "freeze", description: "Changes that cannot be undone, or any changes, within a freeze period." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, from: { $ref: "common.json#/$defs/date", description: "The first day of the freeze." }, until: { $ref: "common.json#/$defs/date", description: "The last day of the freeze." }, "all-changes": { type: "boolean", default: !1, description: "Whether every change of storage is refused, not only those that cannot be undone." }, reason: { $ref: "common.json#/$defs/sentence", description: "Why there is a freeze; shown with each finding." } } }, { title: "GrowthFollowedThroughEntry", type: "object", description: "Provisioned capacity that is left unallocated: a volume group with too much allocated to no file system, an attached volume in no group and without a file system, a file system smaller than the volume under it.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "growth-followed-through", description: "Provisioned capacity that is left unallocated: a volume group with too much allocated to no file system, an attached volume in no group and without a file system, a file system smaller than the volume under it." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; warning if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, "idle-share": { type: "number", minimum: 0, maximum: 1, default: 0.25, description: "The largest share of the provisioned capacity of a volume group that may be unallocated. Exactly this share is allowed." }, "idle-size": { $ref: "common.json#/$defs/size", default: "1 GiB", description: "The size that may be unallocated at any one place, for a partition table, a group's metadata or a last extent. Exactly this size is allowed." } } }, { title: "NamingEntry", type: "object", description: "A name of a server, a volume, a volume group or a mount point that breaks the estate's pattern.", additionalProperties: !1, required: ["rule"], minProperties: 2, properties: { rule: { const: "naming", description: "A name of a server, a volume, a volume group or a mount point that breaks the estate's pattern." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, server: { type: "string", minLength: 1, description: "The pattern (RE2) that a server's name must match from end to end." }, volume: { type: "string", minLength: 1, description: "The pattern (RE2) that a volume's name must match from end to end." }, "volume-group": { type: "string", minLength: 1, description: "The pattern (RE2) that a volume group's name must match from end to end." }, mount: { type: "string", minLength: 1, description: "The pattern (RE2) that the mount point of a file system must match from end to end." } } }, { title: "NoStaleRenameEntry", type: "object", description: "An old name under formerly: that another thing has taken up since, or that nothing on main has.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "no-stale-rename", description: "An old name under formerly: that another thing has taken up since, or that nothing on main has." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; warning if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "ShapeEntry", type: "object", description: "Whatever does not match a JSON Schema of your own: a rule without code, for one kind of thing or for changes.", additionalProperties: !1, required: ["rule", "schema", "of"], properties: { rule: { const: "shape", description: "Whatever does not match a JSON Schema of your own: a rule without code, for one kind of thing or for changes." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." }, of: { type: "string", enum: ["server", "volume", "volume-group", "file-system", "change"], description: "What is checked against the schema, each by itself." }, kinds: { type: "array", minItems: 1, items: { type: "string", enum: ["server-created", "server-adopted", "server-renamed", "server-changed-id", "server-changed-team", "server-moved-site", "server-changed-type", "server-started", "server-stopped", "boot-swapped", "server-edited", "server-deleted", "volume-created", "volume-adopted", "volume-re-created", "volume-renamed", "volume-changed-id", "volume-changed-team", "volume-moved-site", "volume-moved-tier", "volume-grown", "volume-shrunk", "volume-corrected", "volume-unprotected", "volume-edited", "handed-over", "detached", "attached", "attachment-adopted", "volume-deleted", "group-created", "group-adopted", "group-renamed", "member-left", "member-joined", "member-adopted", "group-edited", "group-deleted", "file-system-created", "file-system-adopted", "file-system-remounted", "file-system-edited", "file-system-remade", "file-system-grown", "file-system-shrunk", "file-system-corrected", "file-system-deleted"] }, description: "Only changes of these kinds; all kinds if left out. What is only declared as existing counts as created, attached or joined, too. Only with of: change." }, schema: { type: "object", description: "A JSON Schema (2020-12) that each must satisfy. It sees the keys of the estate files, sizes as numbers under size-gib, and servers, volumes or volume-group for what it is attached to or part of; for a change: change, subject, before and after. Patterns are RE2; $ref stays within the schema." }, message: { $ref: "common.json#/$defs/sentence", description: "The beginning of the message about what does not match." } } }, { title: "TierBoundsEntry", type: "object", description: "A volume whose size its tier does not offer, or a server that needs more IOPS than its volumes' tiers provide.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "tier-bounds", description: "A volume whose size its tier does not offer, or a server that needs more IOPS than its volumes' tiers provide." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }, { title: "PolicyApartEntry", type: "object", description: "A looser policy and a change of storage in one branch.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "policy-apart", description: "A looser policy and a change of storage in one branch." }, name: { $ref: "common.json#/$defs/name", description: "The name by which a waiver or another pack refers to this entry; the rule's own if left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "The level of a finding; error if left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack listed under use." }, where: { $ref: "#/$defs/scope", description: "What the rule applies to; everything if left out." } } }] }, schema209 = { title: "ScopeDeclaration", type: "object", additionalProperties: !1, description: "What the rule applies to; everything if left out. All keys given must match.", properties: { teams: { $ref: "#/$defs/names", description: "Only what belongs to one of these teams.", examples: [["imagery"]] }, sites: { $ref: "#/$defs/names", description: "Only what is at one of these sites.", examples: [["north-quay"]] }, tiers: { $ref: "#/$defs/names", description: "Only volumes of one of these tiers.", examples: [["bulk"]] }, labels: { type: "object", propertyNames: { $ref: "common.json#/$defs/name" }, additionalProperties: { type: ["string", "array"], items: { type: "string" }, minItems: 1 }, description: "Only what has each of these labels, with the value or one of the values." } } }, schema210 = { type: "array", minItems: 1, items: { $ref: "common.json#/$defs/name" } };
function validate169(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate169.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), Array.isArray(data)) {
    if (data.length < 1) {
      let err0 = { instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema210, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    let len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      let data0 = data[i0];
      if (typeof data0 == "string") {
        if (!pattern13.test(data0)) {
          let err1 = { instancePath: instancePath + "/" + i0, schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data0 };
          vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
        }
      } else {
        let err2 = { instancePath: instancePath + "/" + i0, schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data0 };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    }
  } else {
    let err3 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema210.type, parentSchema: schema210, data };
    vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
  }
  return validate169.errors = vErrors, errors === 0;
}
validate169.evaluated = { items: !0, dynamicProps: !1, dynamicItems: !1 };
function validate168(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate168.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    for (let key0 in data)
      if (!(key0 === "teams" || key0 === "sites" || key0 === "tiers" || key0 === "labels")) {
        let err0 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema209, data };
        vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
      }
    if (data.teams !== void 0 && (validate169(data.teams, { instancePath: instancePath + "/teams", parentData: data, parentDataProperty: "teams", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate169.errors : vErrors.concat(validate169.errors), errors = vErrors.length)), data.sites !== void 0 && (validate169(data.sites, { instancePath: instancePath + "/sites", parentData: data, parentDataProperty: "sites", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate169.errors : vErrors.concat(validate169.errors), errors = vErrors.length)), data.tiers !== void 0 && (validate169(data.tiers, { instancePath: instancePath + "/tiers", parentData: data, parentDataProperty: "tiers", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate169.errors : vErrors.concat(validate169.errors), errors = vErrors.length)), data.labels !== void 0) {
      let data3 = data.labels;
      if (data3 && typeof data3 == "object" && !Array.isArray(data3)) {
        for (let key1 in data3) {
          let _errs7 = errors;
          if (typeof key1 == "string") {
            if (!pattern13.test(key1)) {
              let err1 = { instancePath: instancePath + "/labels", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: key1, propertyName: key1 };
              vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
            }
          } else {
            let err2 = { instancePath: instancePath + "/labels", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: key1, propertyName: key1 };
            vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
          }
          var valid1 = _errs7 === errors;
          if (!valid1) {
            let err3 = { instancePath: instancePath + "/labels", schemaPath: "#/properties/labels/propertyNames", keyword: "propertyNames", params: { propertyName: key1 }, message: "property name must be valid", schema: schema209.properties.labels.propertyNames, parentSchema: schema209.properties.labels, data: data3 };
            vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
          }
        }
        for (let key2 in data3) {
          let data4 = data3[key2];
          if (typeof data4 != "string" && !Array.isArray(data4)) {
            let err4 = { instancePath: instancePath + "/labels/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/labels/additionalProperties/type", keyword: "type", params: { type: schema209.properties.labels.additionalProperties.type }, message: "must be string,array", schema: schema209.properties.labels.additionalProperties.type, parentSchema: schema209.properties.labels.additionalProperties, data: data4 };
            vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
          }
          if (Array.isArray(data4)) {
            if (data4.length < 1) {
              let err5 = { instancePath: instancePath + "/labels/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/labels/additionalProperties/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema209.properties.labels.additionalProperties, data: data4 };
              vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
            }
            let len0 = data4.length;
            for (let i0 = 0; i0 < len0; i0++) {
              let data5 = data4[i0];
              if (typeof data5 != "string") {
                let err6 = { instancePath: instancePath + "/labels/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/" + i0, schemaPath: "#/properties/labels/additionalProperties/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema209.properties.labels.additionalProperties.items.type, parentSchema: schema209.properties.labels.additionalProperties.items, data: data5 };
                vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
              }
            }
          }
        }
      } else {
        let err7 = { instancePath: instancePath + "/labels", schemaPath: "#/properties/labels/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema209.properties.labels.type, parentSchema: schema209.properties.labels, data: data3 };
        vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
      }
    }
  } else {
    let err8 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema209.type, parentSchema: schema209, data };
    vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
  }
  return validate168.errors = vErrors, errors === 0;
}
validate168.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate167(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate167.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.rule === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.required, parentSchema: schema207, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    let tag0 = data.rule;
    if (typeof tag0 == "string")
      if (tag0 === "max-monthly-spend") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err1 = { instancePath, schemaPath: "#/oneOf/0/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[0].required, parentSchema: schema207.oneOf[0], data };
            vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
          }
          if (data.limit === void 0) {
            let err2 = { instancePath, schemaPath: "#/oneOf/0/required", keyword: "required", params: { missingProperty: "limit" }, message: "must have required property 'limit'", schema: schema207.oneOf[0].required, parentSchema: schema207.oneOf[0], data };
            vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
          }
          for (let key0 in data)
            if (!func1.call(schema207.oneOf[0].properties, key0)) {
              let err3 = { instancePath, schemaPath: "#/oneOf/0/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[0], data };
              vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
            }
          if (data.rule !== void 0) {
            let data0 = data.rule;
            if (data0 !== "max-monthly-spend") {
              let err4 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/0/properties/rule/const", keyword: "const", params: { allowedValue: "max-monthly-spend" }, message: "must be equal to constant", schema: "max-monthly-spend", parentSchema: schema207.oneOf[0].properties.rule, data: data0 };
              vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
            }
          }
          if (data.name !== void 0) {
            let data1 = data.name;
            if (typeof data1 == "string") {
              if (!pattern13.test(data1)) {
                let err5 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data1 };
                vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
              }
            } else {
              let err6 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data1 };
              vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
            }
          }
          if (data.level !== void 0) {
            let data2 = data.level;
            if (typeof data2 != "string") {
              let err7 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/0/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[0].properties.level.type, parentSchema: schema207.oneOf[0].properties.level, data: data2 };
              vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
            }
            if (!(data2 === "error" || data2 === "warning" || data2 === "note")) {
              let err8 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/0/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[0].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[0].properties.level.enum, parentSchema: schema207.oneOf[0].properties.level, data: data2 };
              vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data3 = data.enabled;
            if (typeof data3 != "boolean") {
              let err9 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/0/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[0].properties.enabled.type, parentSchema: schema207.oneOf[0].properties.enabled, data: data3 };
              vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data.limit !== void 0) {
            let data5 = data.limit;
            if (typeof data5 == "string") {
              if (!pattern89.test(data5)) {
                let err10 = { instancePath: instancePath + "/limit", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema162, data: data5 };
                vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
              }
            } else {
              let err11 = { instancePath: instancePath + "/limit", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema162.type, parentSchema: schema162, data: data5 };
              vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
            }
          }
          if (data.each !== void 0) {
            let data6 = data.each;
            if (typeof data6 != "string") {
              let err12 = { instancePath: instancePath + "/each", schemaPath: "#/oneOf/0/properties/each/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[0].properties.each.type, parentSchema: schema207.oneOf[0].properties.each, data: data6 };
              vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
            }
            if (!(data6 === "team" || data6 === "site")) {
              let err13 = { instancePath: instancePath + "/each", schemaPath: "#/oneOf/0/properties/each/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[0].properties.each.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[0].properties.each.enum, parentSchema: schema207.oneOf[0].properties.each, data: data6 };
              vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
            }
          }
          if (data["warn-from"] !== void 0) {
            let data7 = data["warn-from"];
            if (typeof data7 == "number" && isFinite(data7)) {
              if (data7 > 1 || isNaN(data7)) {
                let err14 = { instancePath: instancePath + "/warn-from", schemaPath: "#/oneOf/0/properties/warn-from/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1 }, message: "must be <= 1", schema: 1, parentSchema: schema207.oneOf[0].properties["warn-from"], data: data7 };
                vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
              }
              if (data7 <= 0 || isNaN(data7)) {
                let err15 = { instancePath: instancePath + "/warn-from", schemaPath: "#/oneOf/0/properties/warn-from/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0", schema: 0, parentSchema: schema207.oneOf[0].properties["warn-from"], data: data7 };
                vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
              }
            } else {
              let err16 = { instancePath: instancePath + "/warn-from", schemaPath: "#/oneOf/0/properties/warn-from/type", keyword: "type", params: { type: "number" }, message: "must be number", schema: schema207.oneOf[0].properties["warn-from"].type, parentSchema: schema207.oneOf[0].properties["warn-from"], data: data7 };
              vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
            }
          }
          if (data.from !== void 0) {
            let data8 = data.from;
            if (typeof data8 == "string") {
              if (!pattern4.test(data8)) {
                let err17 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data8 };
                vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
              }
            } else {
              let err18 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data8 };
              vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
            }
          }
          if (data.until !== void 0) {
            let data9 = data.until;
            if (typeof data9 == "string") {
              if (!pattern4.test(data9)) {
                let err19 = { instancePath: instancePath + "/until", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data9 };
                vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
              }
            } else {
              let err20 = { instancePath: instancePath + "/until", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data9 };
              vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
            }
          }
        } else {
          let err21 = { instancePath, schemaPath: "#/oneOf/0/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[0].type, parentSchema: schema207.oneOf[0], data };
          vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
        }
        var props0 = !0;
      } else if (tag0 === "spend-under-a-limit") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err22 = { instancePath, schemaPath: "#/oneOf/1/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[1].required, parentSchema: schema207.oneOf[1], data };
            vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
          }
          for (let key1 in data)
            if (!(key1 === "rule" || key1 === "name" || key1 === "level" || key1 === "enabled" || key1 === "where")) {
              let err23 = { instancePath, schemaPath: "#/oneOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[1], data };
              vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
            }
          if (data.rule !== void 0) {
            let data10 = data.rule;
            if (data10 !== "spend-under-a-limit") {
              let err24 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/1/properties/rule/const", keyword: "const", params: { allowedValue: "spend-under-a-limit" }, message: "must be equal to constant", schema: "spend-under-a-limit", parentSchema: schema207.oneOf[1].properties.rule, data: data10 };
              vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
            }
          }
          if (data.name !== void 0) {
            let data11 = data.name;
            if (typeof data11 == "string") {
              if (!pattern13.test(data11)) {
                let err25 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data11 };
                vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
              }
            } else {
              let err26 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data11 };
              vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
            }
          }
          if (data.level !== void 0) {
            let data12 = data.level;
            if (typeof data12 != "string") {
              let err27 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/1/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[1].properties.level.type, parentSchema: schema207.oneOf[1].properties.level, data: data12 };
              vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
            }
            if (!(data12 === "error" || data12 === "warning" || data12 === "note")) {
              let err28 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/1/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[1].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[1].properties.level.enum, parentSchema: schema207.oneOf[1].properties.level, data: data12 };
              vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data13 = data.enabled;
            if (typeof data13 != "boolean") {
              let err29 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/1/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[1].properties.enabled.type, parentSchema: schema207.oneOf[1].properties.enabled, data: data13 };
              vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
            }
          }
          data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length));
        } else {
          let err30 = { instancePath, schemaPath: "#/oneOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[1].type, parentSchema: schema207.oneOf[1], data };
          vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "minimum-headroom") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err31 = { instancePath, schemaPath: "#/oneOf/2/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[2].required, parentSchema: schema207.oneOf[2], data };
            vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
          }
          if (data.of === void 0) {
            let err32 = { instancePath, schemaPath: "#/oneOf/2/required", keyword: "required", params: { missingProperty: "of" }, message: "must have required property 'of'", schema: schema207.oneOf[2].required, parentSchema: schema207.oneOf[2], data };
            vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
          }
          for (let key2 in data)
            if (!func1.call(schema207.oneOf[2].properties, key2)) {
              let err33 = { instancePath, schemaPath: "#/oneOf/2/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[2], data };
              vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
            }
          if (data.rule !== void 0) {
            let data15 = data.rule;
            if (data15 !== "minimum-headroom") {
              let err34 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/2/properties/rule/const", keyword: "const", params: { allowedValue: "minimum-headroom" }, message: "must be equal to constant", schema: "minimum-headroom", parentSchema: schema207.oneOf[2].properties.rule, data: data15 };
              vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
            }
          }
          if (data.name !== void 0) {
            let data16 = data.name;
            if (typeof data16 == "string") {
              if (!pattern13.test(data16)) {
                let err35 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data16 };
                vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
              }
            } else {
              let err36 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data16 };
              vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
            }
          }
          if (data.level !== void 0) {
            let data17 = data.level;
            if (typeof data17 != "string") {
              let err37 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/2/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[2].properties.level.type, parentSchema: schema207.oneOf[2].properties.level, data: data17 };
              vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
            }
            if (!(data17 === "error" || data17 === "warning" || data17 === "note")) {
              let err38 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/2/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[2].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[2].properties.level.enum, parentSchema: schema207.oneOf[2].properties.level, data: data17 };
              vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data18 = data.enabled;
            if (typeof data18 != "boolean") {
              let err39 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/2/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[2].properties.enabled.type, parentSchema: schema207.oneOf[2].properties.enabled, data: data18 };
              vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data.of !== void 0) {
            let data20 = data.of;
            if (typeof data20 != "string") {
              let err40 = { instancePath: instancePath + "/of", schemaPath: "#/oneOf/2/properties/of/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[2].properties.of.type, parentSchema: schema207.oneOf[2].properties.of, data: data20 };
              vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
            }
            if (!(data20 === "quota" || data20 === "attachment-slots" || data20 === "volume-group" || data20 === "file-system")) {
              let err41 = { instancePath: instancePath + "/of", schemaPath: "#/oneOf/2/properties/of/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[2].properties.of.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[2].properties.of.enum, parentSchema: schema207.oneOf[2].properties.of, data: data20 };
              vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
            }
          }
          if (data.share !== void 0) {
            let data21 = data.share;
            if (typeof data21 == "number" && isFinite(data21)) {
              if (data21 > 1 || isNaN(data21)) {
                let err42 = { instancePath: instancePath + "/share", schemaPath: "#/oneOf/2/properties/share/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1 }, message: "must be <= 1", schema: 1, parentSchema: schema207.oneOf[2].properties.share, data: data21 };
                vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
              }
              if (data21 < 0 || isNaN(data21)) {
                let err43 = { instancePath: instancePath + "/share", schemaPath: "#/oneOf/2/properties/share/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema207.oneOf[2].properties.share, data: data21 };
                vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
              }
            } else {
              let err44 = { instancePath: instancePath + "/share", schemaPath: "#/oneOf/2/properties/share/type", keyword: "type", params: { type: "number" }, message: "must be number", schema: schema207.oneOf[2].properties.share.type, parentSchema: schema207.oneOf[2].properties.share, data: data21 };
              vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
            }
          }
          if (data.size !== void 0) {
            let data22 = data.size;
            if (typeof data22 == "string") {
              if (!pattern26.test(data22)) {
                let err45 = { instancePath: instancePath + "/size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data22 };
                vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
              }
            } else {
              let err46 = { instancePath: instancePath + "/size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data22 };
              vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
            }
          }
          if (data.count !== void 0) {
            let data23 = data.count;
            if (!(typeof data23 == "number" && !(data23 % 1) && !isNaN(data23) && isFinite(data23))) {
              let err47 = { instancePath: instancePath + "/count", schemaPath: "#/oneOf/2/properties/count/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema207.oneOf[2].properties.count.type, parentSchema: schema207.oneOf[2].properties.count, data: data23 };
              vErrors === null ? vErrors = [err47] : vErrors.push(err47), errors++;
            }
            if (typeof data23 == "number" && isFinite(data23) && (data23 < 0 || isNaN(data23))) {
              let err48 = { instancePath: instancePath + "/count", schemaPath: "#/oneOf/2/properties/count/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema207.oneOf[2].properties.count, data: data23 };
              vErrors === null ? vErrors = [err48] : vErrors.push(err48), errors++;
            }
          }
          if (data.days !== void 0) {
            let data24 = data.days;
            if (!(typeof data24 == "number" && !(data24 % 1) && !isNaN(data24) && isFinite(data24))) {
              let err49 = { instancePath: instancePath + "/days", schemaPath: "#/oneOf/2/properties/days/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema207.oneOf[2].properties.days.type, parentSchema: schema207.oneOf[2].properties.days, data: data24 };
              vErrors === null ? vErrors = [err49] : vErrors.push(err49), errors++;
            }
            if (typeof data24 == "number" && isFinite(data24) && (data24 < 1 || isNaN(data24))) {
              let err50 = { instancePath: instancePath + "/days", schemaPath: "#/oneOf/2/properties/days/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1", schema: 1, parentSchema: schema207.oneOf[2].properties.days, data: data24 };
              vErrors === null ? vErrors = [err50] : vErrors.push(err50), errors++;
            }
          }
        } else {
          let err51 = { instancePath, schemaPath: "#/oneOf/2/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[2].type, parentSchema: schema207.oneOf[2], data };
          vErrors === null ? vErrors = [err51] : vErrors.push(err51), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "no-shrink") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err52 = { instancePath, schemaPath: "#/oneOf/3/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[3].required, parentSchema: schema207.oneOf[3], data };
            vErrors === null ? vErrors = [err52] : vErrors.push(err52), errors++;
          }
          for (let key3 in data)
            if (!(key3 === "rule" || key3 === "name" || key3 === "level" || key3 === "enabled" || key3 === "where" || key3 === "allow-file-systems")) {
              let err53 = { instancePath, schemaPath: "#/oneOf/3/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[3], data };
              vErrors === null ? vErrors = [err53] : vErrors.push(err53), errors++;
            }
          if (data.rule !== void 0) {
            let data25 = data.rule;
            if (data25 !== "no-shrink") {
              let err54 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/3/properties/rule/const", keyword: "const", params: { allowedValue: "no-shrink" }, message: "must be equal to constant", schema: "no-shrink", parentSchema: schema207.oneOf[3].properties.rule, data: data25 };
              vErrors === null ? vErrors = [err54] : vErrors.push(err54), errors++;
            }
          }
          if (data.name !== void 0) {
            let data26 = data.name;
            if (typeof data26 == "string") {
              if (!pattern13.test(data26)) {
                let err55 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data26 };
                vErrors === null ? vErrors = [err55] : vErrors.push(err55), errors++;
              }
            } else {
              let err56 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data26 };
              vErrors === null ? vErrors = [err56] : vErrors.push(err56), errors++;
            }
          }
          if (data.level !== void 0) {
            let data27 = data.level;
            if (typeof data27 != "string") {
              let err57 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/3/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[3].properties.level.type, parentSchema: schema207.oneOf[3].properties.level, data: data27 };
              vErrors === null ? vErrors = [err57] : vErrors.push(err57), errors++;
            }
            if (!(data27 === "error" || data27 === "warning" || data27 === "note")) {
              let err58 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/3/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[3].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[3].properties.level.enum, parentSchema: schema207.oneOf[3].properties.level, data: data27 };
              vErrors === null ? vErrors = [err58] : vErrors.push(err58), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data28 = data.enabled;
            if (typeof data28 != "boolean") {
              let err59 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/3/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[3].properties.enabled.type, parentSchema: schema207.oneOf[3].properties.enabled, data: data28 };
              vErrors === null ? vErrors = [err59] : vErrors.push(err59), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data["allow-file-systems"] !== void 0) {
            let data30 = data["allow-file-systems"];
            if (Array.isArray(data30)) {
              let len0 = data30.length;
              for (let i0 = 0; i0 < len0; i0++) {
                let data31 = data30[i0];
                if (typeof data31 != "string") {
                  let err60 = { instancePath: instancePath + "/allow-file-systems/" + i0, schemaPath: "#/oneOf/3/properties/allow-file-systems/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[3].properties["allow-file-systems"].items.type, parentSchema: schema207.oneOf[3].properties["allow-file-systems"].items, data: data31 };
                  vErrors === null ? vErrors = [err60] : vErrors.push(err60), errors++;
                }
                if (!(data31 === "ext2" || data31 === "ext3" || data31 === "ext4" || data31 === "btrfs" || data31 === "ntfs" || data31 === "swap")) {
                  let err61 = { instancePath: instancePath + "/allow-file-systems/" + i0, schemaPath: "#/oneOf/3/properties/allow-file-systems/items/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[3].properties["allow-file-systems"].items.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[3].properties["allow-file-systems"].items.enum, parentSchema: schema207.oneOf[3].properties["allow-file-systems"].items, data: data31 };
                  vErrors === null ? vErrors = [err61] : vErrors.push(err61), errors++;
                }
              }
            } else {
              let err62 = { instancePath: instancePath + "/allow-file-systems", schemaPath: "#/oneOf/3/properties/allow-file-systems/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema207.oneOf[3].properties["allow-file-systems"].type, parentSchema: schema207.oneOf[3].properties["allow-file-systems"], data: data30 };
              vErrors === null ? vErrors = [err62] : vErrors.push(err62), errors++;
            }
          }
        } else {
          let err63 = { instancePath, schemaPath: "#/oneOf/3/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[3].type, parentSchema: schema207.oneOf[3], data };
          vErrors === null ? vErrors = [err63] : vErrors.push(err63), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "boot-volume-stays") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err64 = { instancePath, schemaPath: "#/oneOf/4/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[4].required, parentSchema: schema207.oneOf[4], data };
            vErrors === null ? vErrors = [err64] : vErrors.push(err64), errors++;
          }
          for (let key4 in data)
            if (!(key4 === "rule" || key4 === "name" || key4 === "level" || key4 === "enabled" || key4 === "where")) {
              let err65 = { instancePath, schemaPath: "#/oneOf/4/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key4 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[4], data };
              vErrors === null ? vErrors = [err65] : vErrors.push(err65), errors++;
            }
          if (data.rule !== void 0) {
            let data32 = data.rule;
            if (data32 !== "boot-volume-stays") {
              let err66 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/4/properties/rule/const", keyword: "const", params: { allowedValue: "boot-volume-stays" }, message: "must be equal to constant", schema: "boot-volume-stays", parentSchema: schema207.oneOf[4].properties.rule, data: data32 };
              vErrors === null ? vErrors = [err66] : vErrors.push(err66), errors++;
            }
          }
          if (data.name !== void 0) {
            let data33 = data.name;
            if (typeof data33 == "string") {
              if (!pattern13.test(data33)) {
                let err67 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data33 };
                vErrors === null ? vErrors = [err67] : vErrors.push(err67), errors++;
              }
            } else {
              let err68 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data33 };
              vErrors === null ? vErrors = [err68] : vErrors.push(err68), errors++;
            }
          }
          if (data.level !== void 0) {
            let data34 = data.level;
            if (typeof data34 != "string") {
              let err69 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/4/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[4].properties.level.type, parentSchema: schema207.oneOf[4].properties.level, data: data34 };
              vErrors === null ? vErrors = [err69] : vErrors.push(err69), errors++;
            }
            if (!(data34 === "error" || data34 === "warning" || data34 === "note")) {
              let err70 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/4/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[4].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[4].properties.level.enum, parentSchema: schema207.oneOf[4].properties.level, data: data34 };
              vErrors === null ? vErrors = [err70] : vErrors.push(err70), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data35 = data.enabled;
            if (typeof data35 != "boolean") {
              let err71 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/4/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[4].properties.enabled.type, parentSchema: schema207.oneOf[4].properties.enabled, data: data35 };
              vErrors === null ? vErrors = [err71] : vErrors.push(err71), errors++;
            }
          }
          data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length));
        } else {
          let err72 = { instancePath, schemaPath: "#/oneOf/4/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[4].type, parentSchema: schema207.oneOf[4], data };
          vErrors === null ? vErrors = [err72] : vErrors.push(err72), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "exclusive-attachment") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err73 = { instancePath, schemaPath: "#/oneOf/5/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[5].required, parentSchema: schema207.oneOf[5], data };
            vErrors === null ? vErrors = [err73] : vErrors.push(err73), errors++;
          }
          for (let key5 in data)
            if (!(key5 === "rule" || key5 === "name" || key5 === "level" || key5 === "enabled" || key5 === "where")) {
              let err74 = { instancePath, schemaPath: "#/oneOf/5/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key5 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[5], data };
              vErrors === null ? vErrors = [err74] : vErrors.push(err74), errors++;
            }
          if (data.rule !== void 0) {
            let data37 = data.rule;
            if (data37 !== "exclusive-attachment") {
              let err75 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/5/properties/rule/const", keyword: "const", params: { allowedValue: "exclusive-attachment" }, message: "must be equal to constant", schema: "exclusive-attachment", parentSchema: schema207.oneOf[5].properties.rule, data: data37 };
              vErrors === null ? vErrors = [err75] : vErrors.push(err75), errors++;
            }
          }
          if (data.name !== void 0) {
            let data38 = data.name;
            if (typeof data38 == "string") {
              if (!pattern13.test(data38)) {
                let err76 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data38 };
                vErrors === null ? vErrors = [err76] : vErrors.push(err76), errors++;
              }
            } else {
              let err77 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data38 };
              vErrors === null ? vErrors = [err77] : vErrors.push(err77), errors++;
            }
          }
          if (data.level !== void 0) {
            let data39 = data.level;
            if (typeof data39 != "string") {
              let err78 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/5/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[5].properties.level.type, parentSchema: schema207.oneOf[5].properties.level, data: data39 };
              vErrors === null ? vErrors = [err78] : vErrors.push(err78), errors++;
            }
            if (!(data39 === "error" || data39 === "warning" || data39 === "note")) {
              let err79 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/5/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[5].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[5].properties.level.enum, parentSchema: schema207.oneOf[5].properties.level, data: data39 };
              vErrors === null ? vErrors = [err79] : vErrors.push(err79), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data40 = data.enabled;
            if (typeof data40 != "boolean") {
              let err80 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/5/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[5].properties.enabled.type, parentSchema: schema207.oneOf[5].properties.enabled, data: data40 };
              vErrors === null ? vErrors = [err80] : vErrors.push(err80), errors++;
            }
          }
          data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length));
        } else {
          let err81 = { instancePath, schemaPath: "#/oneOf/5/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[5].type, parentSchema: schema207.oneOf[5], data };
          vErrors === null ? vErrors = [err81] : vErrors.push(err81), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "group-travels-whole") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err82 = { instancePath, schemaPath: "#/oneOf/6/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[6].required, parentSchema: schema207.oneOf[6], data };
            vErrors === null ? vErrors = [err82] : vErrors.push(err82), errors++;
          }
          for (let key6 in data)
            if (!(key6 === "rule" || key6 === "name" || key6 === "level" || key6 === "enabled" || key6 === "where")) {
              let err83 = { instancePath, schemaPath: "#/oneOf/6/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key6 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[6], data };
              vErrors === null ? vErrors = [err83] : vErrors.push(err83), errors++;
            }
          if (data.rule !== void 0) {
            let data42 = data.rule;
            if (data42 !== "group-travels-whole") {
              let err84 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/6/properties/rule/const", keyword: "const", params: { allowedValue: "group-travels-whole" }, message: "must be equal to constant", schema: "group-travels-whole", parentSchema: schema207.oneOf[6].properties.rule, data: data42 };
              vErrors === null ? vErrors = [err84] : vErrors.push(err84), errors++;
            }
          }
          if (data.name !== void 0) {
            let data43 = data.name;
            if (typeof data43 == "string") {
              if (!pattern13.test(data43)) {
                let err85 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data43 };
                vErrors === null ? vErrors = [err85] : vErrors.push(err85), errors++;
              }
            } else {
              let err86 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data43 };
              vErrors === null ? vErrors = [err86] : vErrors.push(err86), errors++;
            }
          }
          if (data.level !== void 0) {
            let data44 = data.level;
            if (typeof data44 != "string") {
              let err87 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/6/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[6].properties.level.type, parentSchema: schema207.oneOf[6].properties.level, data: data44 };
              vErrors === null ? vErrors = [err87] : vErrors.push(err87), errors++;
            }
            if (!(data44 === "error" || data44 === "warning" || data44 === "note")) {
              let err88 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/6/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[6].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[6].properties.level.enum, parentSchema: schema207.oneOf[6].properties.level, data: data44 };
              vErrors === null ? vErrors = [err88] : vErrors.push(err88), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data45 = data.enabled;
            if (typeof data45 != "boolean") {
              let err89 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/6/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[6].properties.enabled.type, parentSchema: schema207.oneOf[6].properties.enabled, data: data45 };
              vErrors === null ? vErrors = [err89] : vErrors.push(err89), errors++;
            }
          }
          data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length));
        } else {
          let err90 = { instancePath, schemaPath: "#/oneOf/6/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[6].type, parentSchema: schema207.oneOf[6], data };
          vErrors === null ? vErrors = [err90] : vErrors.push(err90), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "same-site") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err91 = { instancePath, schemaPath: "#/oneOf/7/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[7].required, parentSchema: schema207.oneOf[7], data };
            vErrors === null ? vErrors = [err91] : vErrors.push(err91), errors++;
          }
          for (let key7 in data)
            if (!(key7 === "rule" || key7 === "name" || key7 === "level" || key7 === "enabled" || key7 === "where")) {
              let err92 = { instancePath, schemaPath: "#/oneOf/7/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key7 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[7], data };
              vErrors === null ? vErrors = [err92] : vErrors.push(err92), errors++;
            }
          if (data.rule !== void 0) {
            let data47 = data.rule;
            if (data47 !== "same-site") {
              let err93 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/7/properties/rule/const", keyword: "const", params: { allowedValue: "same-site" }, message: "must be equal to constant", schema: "same-site", parentSchema: schema207.oneOf[7].properties.rule, data: data47 };
              vErrors === null ? vErrors = [err93] : vErrors.push(err93), errors++;
            }
          }
          if (data.name !== void 0) {
            let data48 = data.name;
            if (typeof data48 == "string") {
              if (!pattern13.test(data48)) {
                let err94 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data48 };
                vErrors === null ? vErrors = [err94] : vErrors.push(err94), errors++;
              }
            } else {
              let err95 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data48 };
              vErrors === null ? vErrors = [err95] : vErrors.push(err95), errors++;
            }
          }
          if (data.level !== void 0) {
            let data49 = data.level;
            if (typeof data49 != "string") {
              let err96 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/7/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[7].properties.level.type, parentSchema: schema207.oneOf[7].properties.level, data: data49 };
              vErrors === null ? vErrors = [err96] : vErrors.push(err96), errors++;
            }
            if (!(data49 === "error" || data49 === "warning" || data49 === "note")) {
              let err97 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/7/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[7].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[7].properties.level.enum, parentSchema: schema207.oneOf[7].properties.level, data: data49 };
              vErrors === null ? vErrors = [err97] : vErrors.push(err97), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data50 = data.enabled;
            if (typeof data50 != "boolean") {
              let err98 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/7/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[7].properties.enabled.type, parentSchema: schema207.oneOf[7].properties.enabled, data: data50 };
              vErrors === null ? vErrors = [err98] : vErrors.push(err98), errors++;
            }
          }
          data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length));
        } else {
          let err99 = { instancePath, schemaPath: "#/oneOf/7/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[7].type, parentSchema: schema207.oneOf[7], data };
          vErrors === null ? vErrors = [err99] : vErrors.push(err99), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "growth-step") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (Object.keys(data).length < 2) {
            let err100 = { instancePath, schemaPath: "#/oneOf/8/minProperties", keyword: "minProperties", params: { limit: 2 }, message: "must NOT have fewer than 2 properties", schema: 2, parentSchema: schema207.oneOf[8], data };
            vErrors === null ? vErrors = [err100] : vErrors.push(err100), errors++;
          }
          if (data.rule === void 0) {
            let err101 = { instancePath, schemaPath: "#/oneOf/8/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[8].required, parentSchema: schema207.oneOf[8], data };
            vErrors === null ? vErrors = [err101] : vErrors.push(err101), errors++;
          }
          for (let key8 in data)
            if (!(key8 === "rule" || key8 === "name" || key8 === "level" || key8 === "enabled" || key8 === "where" || key8 === "times" || key8 === "by")) {
              let err102 = { instancePath, schemaPath: "#/oneOf/8/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key8 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[8], data };
              vErrors === null ? vErrors = [err102] : vErrors.push(err102), errors++;
            }
          if (data.rule !== void 0) {
            let data52 = data.rule;
            if (data52 !== "growth-step") {
              let err103 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/8/properties/rule/const", keyword: "const", params: { allowedValue: "growth-step" }, message: "must be equal to constant", schema: "growth-step", parentSchema: schema207.oneOf[8].properties.rule, data: data52 };
              vErrors === null ? vErrors = [err103] : vErrors.push(err103), errors++;
            }
          }
          if (data.name !== void 0) {
            let data53 = data.name;
            if (typeof data53 == "string") {
              if (!pattern13.test(data53)) {
                let err104 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data53 };
                vErrors === null ? vErrors = [err104] : vErrors.push(err104), errors++;
              }
            } else {
              let err105 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data53 };
              vErrors === null ? vErrors = [err105] : vErrors.push(err105), errors++;
            }
          }
          if (data.level !== void 0) {
            let data54 = data.level;
            if (typeof data54 != "string") {
              let err106 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/8/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[8].properties.level.type, parentSchema: schema207.oneOf[8].properties.level, data: data54 };
              vErrors === null ? vErrors = [err106] : vErrors.push(err106), errors++;
            }
            if (!(data54 === "error" || data54 === "warning" || data54 === "note")) {
              let err107 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/8/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[8].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[8].properties.level.enum, parentSchema: schema207.oneOf[8].properties.level, data: data54 };
              vErrors === null ? vErrors = [err107] : vErrors.push(err107), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data55 = data.enabled;
            if (typeof data55 != "boolean") {
              let err108 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/8/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[8].properties.enabled.type, parentSchema: schema207.oneOf[8].properties.enabled, data: data55 };
              vErrors === null ? vErrors = [err108] : vErrors.push(err108), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data.times !== void 0) {
            let data57 = data.times;
            if (typeof data57 == "number" && isFinite(data57)) {
              if (data57 < 1 || isNaN(data57)) {
                let err109 = { instancePath: instancePath + "/times", schemaPath: "#/oneOf/8/properties/times/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1", schema: 1, parentSchema: schema207.oneOf[8].properties.times, data: data57 };
                vErrors === null ? vErrors = [err109] : vErrors.push(err109), errors++;
              }
            } else {
              let err110 = { instancePath: instancePath + "/times", schemaPath: "#/oneOf/8/properties/times/type", keyword: "type", params: { type: "number" }, message: "must be number", schema: schema207.oneOf[8].properties.times.type, parentSchema: schema207.oneOf[8].properties.times, data: data57 };
              vErrors === null ? vErrors = [err110] : vErrors.push(err110), errors++;
            }
          }
          if (data.by !== void 0) {
            let data58 = data.by;
            if (typeof data58 == "string") {
              if (!pattern26.test(data58)) {
                let err111 = { instancePath: instancePath + "/by", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data58 };
                vErrors === null ? vErrors = [err111] : vErrors.push(err111), errors++;
              }
            } else {
              let err112 = { instancePath: instancePath + "/by", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data58 };
              vErrors === null ? vErrors = [err112] : vErrors.push(err112), errors++;
            }
          }
        } else {
          let err113 = { instancePath, schemaPath: "#/oneOf/8/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[8].type, parentSchema: schema207.oneOf[8], data };
          vErrors === null ? vErrors = [err113] : vErrors.push(err113), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "detached-volume-owned") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err114 = { instancePath, schemaPath: "#/oneOf/9/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[9].required, parentSchema: schema207.oneOf[9], data };
            vErrors === null ? vErrors = [err114] : vErrors.push(err114), errors++;
          }
          for (let key9 in data)
            if (!(key9 === "rule" || key9 === "name" || key9 === "level" || key9 === "enabled" || key9 === "where" || key9 === "at-most" || key9 === "grace")) {
              let err115 = { instancePath, schemaPath: "#/oneOf/9/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key9 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[9], data };
              vErrors === null ? vErrors = [err115] : vErrors.push(err115), errors++;
            }
          if (data.rule !== void 0) {
            let data59 = data.rule;
            if (data59 !== "detached-volume-owned") {
              let err116 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/9/properties/rule/const", keyword: "const", params: { allowedValue: "detached-volume-owned" }, message: "must be equal to constant", schema: "detached-volume-owned", parentSchema: schema207.oneOf[9].properties.rule, data: data59 };
              vErrors === null ? vErrors = [err116] : vErrors.push(err116), errors++;
            }
          }
          if (data.name !== void 0) {
            let data60 = data.name;
            if (typeof data60 == "string") {
              if (!pattern13.test(data60)) {
                let err117 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data60 };
                vErrors === null ? vErrors = [err117] : vErrors.push(err117), errors++;
              }
            } else {
              let err118 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data60 };
              vErrors === null ? vErrors = [err118] : vErrors.push(err118), errors++;
            }
          }
          if (data.level !== void 0) {
            let data61 = data.level;
            if (typeof data61 != "string") {
              let err119 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/9/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[9].properties.level.type, parentSchema: schema207.oneOf[9].properties.level, data: data61 };
              vErrors === null ? vErrors = [err119] : vErrors.push(err119), errors++;
            }
            if (!(data61 === "error" || data61 === "warning" || data61 === "note")) {
              let err120 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/9/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[9].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[9].properties.level.enum, parentSchema: schema207.oneOf[9].properties.level, data: data61 };
              vErrors === null ? vErrors = [err120] : vErrors.push(err120), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data62 = data.enabled;
            if (typeof data62 != "boolean") {
              let err121 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/9/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[9].properties.enabled.type, parentSchema: schema207.oneOf[9].properties.enabled, data: data62 };
              vErrors === null ? vErrors = [err121] : vErrors.push(err121), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data["at-most"] !== void 0) {
            let data64 = data["at-most"];
            if (!(typeof data64 == "number" && !(data64 % 1) && !isNaN(data64) && isFinite(data64))) {
              let err122 = { instancePath: instancePath + "/at-most", schemaPath: "#/oneOf/9/properties/at-most/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema207.oneOf[9].properties["at-most"].type, parentSchema: schema207.oneOf[9].properties["at-most"], data: data64 };
              vErrors === null ? vErrors = [err122] : vErrors.push(err122), errors++;
            }
            if (typeof data64 == "number" && isFinite(data64) && (data64 < 1 || isNaN(data64))) {
              let err123 = { instancePath: instancePath + "/at-most", schemaPath: "#/oneOf/9/properties/at-most/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1", schema: 1, parentSchema: schema207.oneOf[9].properties["at-most"], data: data64 };
              vErrors === null ? vErrors = [err123] : vErrors.push(err123), errors++;
            }
          }
          if (data.grace !== void 0) {
            let data65 = data.grace;
            if (!(typeof data65 == "number" && !(data65 % 1) && !isNaN(data65) && isFinite(data65))) {
              let err124 = { instancePath: instancePath + "/grace", schemaPath: "#/oneOf/9/properties/grace/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema207.oneOf[9].properties.grace.type, parentSchema: schema207.oneOf[9].properties.grace, data: data65 };
              vErrors === null ? vErrors = [err124] : vErrors.push(err124), errors++;
            }
            if (typeof data65 == "number" && isFinite(data65) && (data65 < 0 || isNaN(data65))) {
              let err125 = { instancePath: instancePath + "/grace", schemaPath: "#/oneOf/9/properties/grace/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema207.oneOf[9].properties.grace, data: data65 };
              vErrors === null ? vErrors = [err125] : vErrors.push(err125), errors++;
            }
          }
        } else {
          let err126 = { instancePath, schemaPath: "#/oneOf/9/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[9].type, parentSchema: schema207.oneOf[9], data };
          vErrors === null ? vErrors = [err126] : vErrors.push(err126), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "deletion-prepared") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err127 = { instancePath, schemaPath: "#/oneOf/10/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[10].required, parentSchema: schema207.oneOf[10], data };
            vErrors === null ? vErrors = [err127] : vErrors.push(err127), errors++;
          }
          for (let key10 in data)
            if (!(key10 === "rule" || key10 === "name" || key10 === "level" || key10 === "enabled" || key10 === "where" || key10 === "backup-within" || key10 === "attached-allowed")) {
              let err128 = { instancePath, schemaPath: "#/oneOf/10/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key10 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[10], data };
              vErrors === null ? vErrors = [err128] : vErrors.push(err128), errors++;
            }
          if (data.rule !== void 0) {
            let data66 = data.rule;
            if (data66 !== "deletion-prepared") {
              let err129 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/10/properties/rule/const", keyword: "const", params: { allowedValue: "deletion-prepared" }, message: "must be equal to constant", schema: "deletion-prepared", parentSchema: schema207.oneOf[10].properties.rule, data: data66 };
              vErrors === null ? vErrors = [err129] : vErrors.push(err129), errors++;
            }
          }
          if (data.name !== void 0) {
            let data67 = data.name;
            if (typeof data67 == "string") {
              if (!pattern13.test(data67)) {
                let err130 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data67 };
                vErrors === null ? vErrors = [err130] : vErrors.push(err130), errors++;
              }
            } else {
              let err131 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data67 };
              vErrors === null ? vErrors = [err131] : vErrors.push(err131), errors++;
            }
          }
          if (data.level !== void 0) {
            let data68 = data.level;
            if (typeof data68 != "string") {
              let err132 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/10/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[10].properties.level.type, parentSchema: schema207.oneOf[10].properties.level, data: data68 };
              vErrors === null ? vErrors = [err132] : vErrors.push(err132), errors++;
            }
            if (!(data68 === "error" || data68 === "warning" || data68 === "note")) {
              let err133 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/10/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[10].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[10].properties.level.enum, parentSchema: schema207.oneOf[10].properties.level, data: data68 };
              vErrors === null ? vErrors = [err133] : vErrors.push(err133), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data69 = data.enabled;
            if (typeof data69 != "boolean") {
              let err134 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/10/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[10].properties.enabled.type, parentSchema: schema207.oneOf[10].properties.enabled, data: data69 };
              vErrors === null ? vErrors = [err134] : vErrors.push(err134), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data["backup-within"] !== void 0) {
            let data71 = data["backup-within"];
            if (!(typeof data71 == "number" && !(data71 % 1) && !isNaN(data71) && isFinite(data71))) {
              let err135 = { instancePath: instancePath + "/backup-within", schemaPath: "#/oneOf/10/properties/backup-within/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema207.oneOf[10].properties["backup-within"].type, parentSchema: schema207.oneOf[10].properties["backup-within"], data: data71 };
              vErrors === null ? vErrors = [err135] : vErrors.push(err135), errors++;
            }
            if (typeof data71 == "number" && isFinite(data71) && (data71 < 0 || isNaN(data71))) {
              let err136 = { instancePath: instancePath + "/backup-within", schemaPath: "#/oneOf/10/properties/backup-within/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema207.oneOf[10].properties["backup-within"], data: data71 };
              vErrors === null ? vErrors = [err136] : vErrors.push(err136), errors++;
            }
          }
          if (data["attached-allowed"] !== void 0) {
            let data72 = data["attached-allowed"];
            if (typeof data72 != "boolean") {
              let err137 = { instancePath: instancePath + "/attached-allowed", schemaPath: "#/oneOf/10/properties/attached-allowed/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[10].properties["attached-allowed"].type, parentSchema: schema207.oneOf[10].properties["attached-allowed"], data: data72 };
              vErrors === null ? vErrors = [err137] : vErrors.push(err137), errors++;
            }
          }
        } else {
          let err138 = { instancePath, schemaPath: "#/oneOf/10/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[10].type, parentSchema: schema207.oneOf[10], data };
          vErrors === null ? vErrors = [err138] : vErrors.push(err138), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "destructive-changes-few") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err139 = { instancePath, schemaPath: "#/oneOf/11/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[11].required, parentSchema: schema207.oneOf[11], data };
            vErrors === null ? vErrors = [err139] : vErrors.push(err139), errors++;
          }
          if (data["at-most"] === void 0) {
            let err140 = { instancePath, schemaPath: "#/oneOf/11/required", keyword: "required", params: { missingProperty: "at-most" }, message: "must have required property 'at-most'", schema: schema207.oneOf[11].required, parentSchema: schema207.oneOf[11], data };
            vErrors === null ? vErrors = [err140] : vErrors.push(err140), errors++;
          }
          for (let key11 in data)
            if (!(key11 === "rule" || key11 === "name" || key11 === "level" || key11 === "enabled" || key11 === "where" || key11 === "at-most")) {
              let err141 = { instancePath, schemaPath: "#/oneOf/11/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key11 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[11], data };
              vErrors === null ? vErrors = [err141] : vErrors.push(err141), errors++;
            }
          if (data.rule !== void 0) {
            let data73 = data.rule;
            if (data73 !== "destructive-changes-few") {
              let err142 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/11/properties/rule/const", keyword: "const", params: { allowedValue: "destructive-changes-few" }, message: "must be equal to constant", schema: "destructive-changes-few", parentSchema: schema207.oneOf[11].properties.rule, data: data73 };
              vErrors === null ? vErrors = [err142] : vErrors.push(err142), errors++;
            }
          }
          if (data.name !== void 0) {
            let data74 = data.name;
            if (typeof data74 == "string") {
              if (!pattern13.test(data74)) {
                let err143 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data74 };
                vErrors === null ? vErrors = [err143] : vErrors.push(err143), errors++;
              }
            } else {
              let err144 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data74 };
              vErrors === null ? vErrors = [err144] : vErrors.push(err144), errors++;
            }
          }
          if (data.level !== void 0) {
            let data75 = data.level;
            if (typeof data75 != "string") {
              let err145 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/11/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[11].properties.level.type, parentSchema: schema207.oneOf[11].properties.level, data: data75 };
              vErrors === null ? vErrors = [err145] : vErrors.push(err145), errors++;
            }
            if (!(data75 === "error" || data75 === "warning" || data75 === "note")) {
              let err146 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/11/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[11].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[11].properties.level.enum, parentSchema: schema207.oneOf[11].properties.level, data: data75 };
              vErrors === null ? vErrors = [err146] : vErrors.push(err146), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data76 = data.enabled;
            if (typeof data76 != "boolean") {
              let err147 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/11/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[11].properties.enabled.type, parentSchema: schema207.oneOf[11].properties.enabled, data: data76 };
              vErrors === null ? vErrors = [err147] : vErrors.push(err147), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data["at-most"] !== void 0) {
            let data78 = data["at-most"];
            if (!(typeof data78 == "number" && !(data78 % 1) && !isNaN(data78) && isFinite(data78))) {
              let err148 = { instancePath: instancePath + "/at-most", schemaPath: "#/oneOf/11/properties/at-most/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema207.oneOf[11].properties["at-most"].type, parentSchema: schema207.oneOf[11].properties["at-most"], data: data78 };
              vErrors === null ? vErrors = [err148] : vErrors.push(err148), errors++;
            }
            if (typeof data78 == "number" && isFinite(data78) && (data78 < 0 || isNaN(data78))) {
              let err149 = { instancePath: instancePath + "/at-most", schemaPath: "#/oneOf/11/properties/at-most/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema207.oneOf[11].properties["at-most"], data: data78 };
              vErrors === null ? vErrors = [err149] : vErrors.push(err149), errors++;
            }
          }
        } else {
          let err150 = { instancePath, schemaPath: "#/oneOf/11/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[11].type, parentSchema: schema207.oneOf[11], data };
          vErrors === null ? vErrors = [err150] : vErrors.push(err150), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "surveyed-as-declared") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err151 = { instancePath, schemaPath: "#/oneOf/12/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[12].required, parentSchema: schema207.oneOf[12], data };
            vErrors === null ? vErrors = [err151] : vErrors.push(err151), errors++;
          }
          for (let key12 in data)
            if (!(key12 === "rule" || key12 === "name" || key12 === "level" || key12 === "enabled" || key12 === "where" || key12 === "within" || key12 === "too-old" || key12 === "missing")) {
              let err152 = { instancePath, schemaPath: "#/oneOf/12/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key12 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[12], data };
              vErrors === null ? vErrors = [err152] : vErrors.push(err152), errors++;
            }
          if (data.rule !== void 0) {
            let data79 = data.rule;
            if (data79 !== "surveyed-as-declared") {
              let err153 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/12/properties/rule/const", keyword: "const", params: { allowedValue: "surveyed-as-declared" }, message: "must be equal to constant", schema: "surveyed-as-declared", parentSchema: schema207.oneOf[12].properties.rule, data: data79 };
              vErrors === null ? vErrors = [err153] : vErrors.push(err153), errors++;
            }
          }
          if (data.name !== void 0) {
            let data80 = data.name;
            if (typeof data80 == "string") {
              if (!pattern13.test(data80)) {
                let err154 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data80 };
                vErrors === null ? vErrors = [err154] : vErrors.push(err154), errors++;
              }
            } else {
              let err155 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data80 };
              vErrors === null ? vErrors = [err155] : vErrors.push(err155), errors++;
            }
          }
          if (data.level !== void 0) {
            let data81 = data.level;
            if (typeof data81 != "string") {
              let err156 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/12/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[12].properties.level.type, parentSchema: schema207.oneOf[12].properties.level, data: data81 };
              vErrors === null ? vErrors = [err156] : vErrors.push(err156), errors++;
            }
            if (!(data81 === "error" || data81 === "warning" || data81 === "note")) {
              let err157 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/12/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[12].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[12].properties.level.enum, parentSchema: schema207.oneOf[12].properties.level, data: data81 };
              vErrors === null ? vErrors = [err157] : vErrors.push(err157), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data82 = data.enabled;
            if (typeof data82 != "boolean") {
              let err158 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/12/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[12].properties.enabled.type, parentSchema: schema207.oneOf[12].properties.enabled, data: data82 };
              vErrors === null ? vErrors = [err158] : vErrors.push(err158), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data.within !== void 0) {
            let data84 = data.within;
            if (!(typeof data84 == "number" && !(data84 % 1) && !isNaN(data84) && isFinite(data84))) {
              let err159 = { instancePath: instancePath + "/within", schemaPath: "#/oneOf/12/properties/within/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema207.oneOf[12].properties.within.type, parentSchema: schema207.oneOf[12].properties.within, data: data84 };
              vErrors === null ? vErrors = [err159] : vErrors.push(err159), errors++;
            }
            if (typeof data84 == "number" && isFinite(data84) && (data84 < 0 || isNaN(data84))) {
              let err160 = { instancePath: instancePath + "/within", schemaPath: "#/oneOf/12/properties/within/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema207.oneOf[12].properties.within, data: data84 };
              vErrors === null ? vErrors = [err160] : vErrors.push(err160), errors++;
            }
          }
          if (data["too-old"] !== void 0) {
            let data85 = data["too-old"];
            if (!(data85 === "error" || data85 === "warning" || data85 === "note")) {
              let err161 = { instancePath: instancePath + "/too-old", schemaPath: "#/oneOf/12/properties/too-old/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[12].properties["too-old"].enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[12].properties["too-old"].enum, parentSchema: schema207.oneOf[12].properties["too-old"], data: data85 };
              vErrors === null ? vErrors = [err161] : vErrors.push(err161), errors++;
            }
          }
          if (data.missing !== void 0) {
            let data86 = data.missing;
            if (!(data86 === "error" || data86 === "warning" || data86 === "note")) {
              let err162 = { instancePath: instancePath + "/missing", schemaPath: "#/oneOf/12/properties/missing/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[12].properties.missing.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[12].properties.missing.enum, parentSchema: schema207.oneOf[12].properties.missing, data: data86 };
              vErrors === null ? vErrors = [err162] : vErrors.push(err162), errors++;
            }
          }
        } else {
          let err163 = { instancePath, schemaPath: "#/oneOf/12/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[12].type, parentSchema: schema207.oneOf[12], data };
          vErrors === null ? vErrors = [err163] : vErrors.push(err163), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "order-of-steps") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err164 = { instancePath, schemaPath: "#/oneOf/13/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[13].required, parentSchema: schema207.oneOf[13], data };
            vErrors === null ? vErrors = [err164] : vErrors.push(err164), errors++;
          }
          for (let key13 in data)
            if (!(key13 === "rule" || key13 === "name" || key13 === "level" || key13 === "enabled" || key13 === "where")) {
              let err165 = { instancePath, schemaPath: "#/oneOf/13/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key13 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[13], data };
              vErrors === null ? vErrors = [err165] : vErrors.push(err165), errors++;
            }
          if (data.rule !== void 0) {
            let data87 = data.rule;
            if (data87 !== "order-of-steps") {
              let err166 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/13/properties/rule/const", keyword: "const", params: { allowedValue: "order-of-steps" }, message: "must be equal to constant", schema: "order-of-steps", parentSchema: schema207.oneOf[13].properties.rule, data: data87 };
              vErrors === null ? vErrors = [err166] : vErrors.push(err166), errors++;
            }
          }
          if (data.name !== void 0) {
            let data88 = data.name;
            if (typeof data88 == "string") {
              if (!pattern13.test(data88)) {
                let err167 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data88 };
                vErrors === null ? vErrors = [err167] : vErrors.push(err167), errors++;
              }
            } else {
              let err168 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data88 };
              vErrors === null ? vErrors = [err168] : vErrors.push(err168), errors++;
            }
          }
          if (data.level !== void 0) {
            let data89 = data.level;
            if (typeof data89 != "string") {
              let err169 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/13/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[13].properties.level.type, parentSchema: schema207.oneOf[13].properties.level, data: data89 };
              vErrors === null ? vErrors = [err169] : vErrors.push(err169), errors++;
            }
            if (!(data89 === "error" || data89 === "warning" || data89 === "note")) {
              let err170 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/13/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[13].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[13].properties.level.enum, parentSchema: schema207.oneOf[13].properties.level, data: data89 };
              vErrors === null ? vErrors = [err170] : vErrors.push(err170), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data90 = data.enabled;
            if (typeof data90 != "boolean") {
              let err171 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/13/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[13].properties.enabled.type, parentSchema: schema207.oneOf[13].properties.enabled, data: data90 };
              vErrors === null ? vErrors = [err171] : vErrors.push(err171), errors++;
            }
          }
          data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length));
        } else {
          let err172 = { instancePath, schemaPath: "#/oneOf/13/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[13].type, parentSchema: schema207.oneOf[13], data };
          vErrors === null ? vErrors = [err172] : vErrors.push(err172), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "freeze") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (Object.keys(data).length < 2) {
            let err173 = { instancePath, schemaPath: "#/oneOf/14/minProperties", keyword: "minProperties", params: { limit: 2 }, message: "must NOT have fewer than 2 properties", schema: 2, parentSchema: schema207.oneOf[14], data };
            vErrors === null ? vErrors = [err173] : vErrors.push(err173), errors++;
          }
          if (data.rule === void 0) {
            let err174 = { instancePath, schemaPath: "#/oneOf/14/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[14].required, parentSchema: schema207.oneOf[14], data };
            vErrors === null ? vErrors = [err174] : vErrors.push(err174), errors++;
          }
          for (let key14 in data)
            if (!func1.call(schema207.oneOf[14].properties, key14)) {
              let err175 = { instancePath, schemaPath: "#/oneOf/14/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key14 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[14], data };
              vErrors === null ? vErrors = [err175] : vErrors.push(err175), errors++;
            }
          if (data.rule !== void 0) {
            let data92 = data.rule;
            if (data92 !== "freeze") {
              let err176 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/14/properties/rule/const", keyword: "const", params: { allowedValue: "freeze" }, message: "must be equal to constant", schema: "freeze", parentSchema: schema207.oneOf[14].properties.rule, data: data92 };
              vErrors === null ? vErrors = [err176] : vErrors.push(err176), errors++;
            }
          }
          if (data.name !== void 0) {
            let data93 = data.name;
            if (typeof data93 == "string") {
              if (!pattern13.test(data93)) {
                let err177 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data93 };
                vErrors === null ? vErrors = [err177] : vErrors.push(err177), errors++;
              }
            } else {
              let err178 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data93 };
              vErrors === null ? vErrors = [err178] : vErrors.push(err178), errors++;
            }
          }
          if (data.level !== void 0) {
            let data94 = data.level;
            if (typeof data94 != "string") {
              let err179 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/14/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[14].properties.level.type, parentSchema: schema207.oneOf[14].properties.level, data: data94 };
              vErrors === null ? vErrors = [err179] : vErrors.push(err179), errors++;
            }
            if (!(data94 === "error" || data94 === "warning" || data94 === "note")) {
              let err180 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/14/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[14].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[14].properties.level.enum, parentSchema: schema207.oneOf[14].properties.level, data: data94 };
              vErrors === null ? vErrors = [err180] : vErrors.push(err180), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data95 = data.enabled;
            if (typeof data95 != "boolean") {
              let err181 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/14/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[14].properties.enabled.type, parentSchema: schema207.oneOf[14].properties.enabled, data: data95 };
              vErrors === null ? vErrors = [err181] : vErrors.push(err181), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data.from !== void 0) {
            let data97 = data.from;
            if (typeof data97 == "string") {
              if (!pattern4.test(data97)) {
                let err182 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data97 };
                vErrors === null ? vErrors = [err182] : vErrors.push(err182), errors++;
              }
            } else {
              let err183 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data97 };
              vErrors === null ? vErrors = [err183] : vErrors.push(err183), errors++;
            }
          }
          if (data.until !== void 0) {
            let data98 = data.until;
            if (typeof data98 == "string") {
              if (!pattern4.test(data98)) {
                let err184 = { instancePath: instancePath + "/until", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data98 };
                vErrors === null ? vErrors = [err184] : vErrors.push(err184), errors++;
              }
            } else {
              let err185 = { instancePath: instancePath + "/until", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data98 };
              vErrors === null ? vErrors = [err185] : vErrors.push(err185), errors++;
            }
          }
          if (data["all-changes"] !== void 0) {
            let data99 = data["all-changes"];
            if (typeof data99 != "boolean") {
              let err186 = { instancePath: instancePath + "/all-changes", schemaPath: "#/oneOf/14/properties/all-changes/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[14].properties["all-changes"].type, parentSchema: schema207.oneOf[14].properties["all-changes"], data: data99 };
              vErrors === null ? vErrors = [err186] : vErrors.push(err186), errors++;
            }
          }
          if (data.reason !== void 0) {
            let data100 = data.reason;
            if (typeof data100 == "string") {
              if (!pattern28.test(data100)) {
                let err187 = { instancePath: instancePath + "/reason", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema94, data: data100 };
                vErrors === null ? vErrors = [err187] : vErrors.push(err187), errors++;
              }
            } else {
              let err188 = { instancePath: instancePath + "/reason", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema94.type, parentSchema: schema94, data: data100 };
              vErrors === null ? vErrors = [err188] : vErrors.push(err188), errors++;
            }
          }
        } else {
          let err189 = { instancePath, schemaPath: "#/oneOf/14/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[14].type, parentSchema: schema207.oneOf[14], data };
          vErrors === null ? vErrors = [err189] : vErrors.push(err189), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "growth-followed-through") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err190 = { instancePath, schemaPath: "#/oneOf/15/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[15].required, parentSchema: schema207.oneOf[15], data };
            vErrors === null ? vErrors = [err190] : vErrors.push(err190), errors++;
          }
          for (let key15 in data)
            if (!(key15 === "rule" || key15 === "name" || key15 === "level" || key15 === "enabled" || key15 === "where" || key15 === "idle-share" || key15 === "idle-size")) {
              let err191 = { instancePath, schemaPath: "#/oneOf/15/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key15 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[15], data };
              vErrors === null ? vErrors = [err191] : vErrors.push(err191), errors++;
            }
          if (data.rule !== void 0) {
            let data101 = data.rule;
            if (data101 !== "growth-followed-through") {
              let err192 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/15/properties/rule/const", keyword: "const", params: { allowedValue: "growth-followed-through" }, message: "must be equal to constant", schema: "growth-followed-through", parentSchema: schema207.oneOf[15].properties.rule, data: data101 };
              vErrors === null ? vErrors = [err192] : vErrors.push(err192), errors++;
            }
          }
          if (data.name !== void 0) {
            let data102 = data.name;
            if (typeof data102 == "string") {
              if (!pattern13.test(data102)) {
                let err193 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data102 };
                vErrors === null ? vErrors = [err193] : vErrors.push(err193), errors++;
              }
            } else {
              let err194 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data102 };
              vErrors === null ? vErrors = [err194] : vErrors.push(err194), errors++;
            }
          }
          if (data.level !== void 0) {
            let data103 = data.level;
            if (typeof data103 != "string") {
              let err195 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/15/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[15].properties.level.type, parentSchema: schema207.oneOf[15].properties.level, data: data103 };
              vErrors === null ? vErrors = [err195] : vErrors.push(err195), errors++;
            }
            if (!(data103 === "error" || data103 === "warning" || data103 === "note")) {
              let err196 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/15/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[15].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[15].properties.level.enum, parentSchema: schema207.oneOf[15].properties.level, data: data103 };
              vErrors === null ? vErrors = [err196] : vErrors.push(err196), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data104 = data.enabled;
            if (typeof data104 != "boolean") {
              let err197 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/15/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[15].properties.enabled.type, parentSchema: schema207.oneOf[15].properties.enabled, data: data104 };
              vErrors === null ? vErrors = [err197] : vErrors.push(err197), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data["idle-share"] !== void 0) {
            let data106 = data["idle-share"];
            if (typeof data106 == "number" && isFinite(data106)) {
              if (data106 > 1 || isNaN(data106)) {
                let err198 = { instancePath: instancePath + "/idle-share", schemaPath: "#/oneOf/15/properties/idle-share/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1 }, message: "must be <= 1", schema: 1, parentSchema: schema207.oneOf[15].properties["idle-share"], data: data106 };
                vErrors === null ? vErrors = [err198] : vErrors.push(err198), errors++;
              }
              if (data106 < 0 || isNaN(data106)) {
                let err199 = { instancePath: instancePath + "/idle-share", schemaPath: "#/oneOf/15/properties/idle-share/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema207.oneOf[15].properties["idle-share"], data: data106 };
                vErrors === null ? vErrors = [err199] : vErrors.push(err199), errors++;
              }
            } else {
              let err200 = { instancePath: instancePath + "/idle-share", schemaPath: "#/oneOf/15/properties/idle-share/type", keyword: "type", params: { type: "number" }, message: "must be number", schema: schema207.oneOf[15].properties["idle-share"].type, parentSchema: schema207.oneOf[15].properties["idle-share"], data: data106 };
              vErrors === null ? vErrors = [err200] : vErrors.push(err200), errors++;
            }
          }
          if (data["idle-size"] !== void 0) {
            let data107 = data["idle-size"];
            if (typeof data107 == "string") {
              if (!pattern26.test(data107)) {
                let err201 = { instancePath: instancePath + "/idle-size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data107 };
                vErrors === null ? vErrors = [err201] : vErrors.push(err201), errors++;
              }
            } else {
              let err202 = { instancePath: instancePath + "/idle-size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data107 };
              vErrors === null ? vErrors = [err202] : vErrors.push(err202), errors++;
            }
          }
        } else {
          let err203 = { instancePath, schemaPath: "#/oneOf/15/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[15].type, parentSchema: schema207.oneOf[15], data };
          vErrors === null ? vErrors = [err203] : vErrors.push(err203), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "naming") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (Object.keys(data).length < 2) {
            let err204 = { instancePath, schemaPath: "#/oneOf/16/minProperties", keyword: "minProperties", params: { limit: 2 }, message: "must NOT have fewer than 2 properties", schema: 2, parentSchema: schema207.oneOf[16], data };
            vErrors === null ? vErrors = [err204] : vErrors.push(err204), errors++;
          }
          if (data.rule === void 0) {
            let err205 = { instancePath, schemaPath: "#/oneOf/16/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[16].required, parentSchema: schema207.oneOf[16], data };
            vErrors === null ? vErrors = [err205] : vErrors.push(err205), errors++;
          }
          for (let key16 in data)
            if (!func1.call(schema207.oneOf[16].properties, key16)) {
              let err206 = { instancePath, schemaPath: "#/oneOf/16/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key16 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[16], data };
              vErrors === null ? vErrors = [err206] : vErrors.push(err206), errors++;
            }
          if (data.rule !== void 0) {
            let data108 = data.rule;
            if (data108 !== "naming") {
              let err207 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/16/properties/rule/const", keyword: "const", params: { allowedValue: "naming" }, message: "must be equal to constant", schema: "naming", parentSchema: schema207.oneOf[16].properties.rule, data: data108 };
              vErrors === null ? vErrors = [err207] : vErrors.push(err207), errors++;
            }
          }
          if (data.name !== void 0) {
            let data109 = data.name;
            if (typeof data109 == "string") {
              if (!pattern13.test(data109)) {
                let err208 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data109 };
                vErrors === null ? vErrors = [err208] : vErrors.push(err208), errors++;
              }
            } else {
              let err209 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data109 };
              vErrors === null ? vErrors = [err209] : vErrors.push(err209), errors++;
            }
          }
          if (data.level !== void 0) {
            let data110 = data.level;
            if (typeof data110 != "string") {
              let err210 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/16/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[16].properties.level.type, parentSchema: schema207.oneOf[16].properties.level, data: data110 };
              vErrors === null ? vErrors = [err210] : vErrors.push(err210), errors++;
            }
            if (!(data110 === "error" || data110 === "warning" || data110 === "note")) {
              let err211 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/16/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[16].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[16].properties.level.enum, parentSchema: schema207.oneOf[16].properties.level, data: data110 };
              vErrors === null ? vErrors = [err211] : vErrors.push(err211), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data111 = data.enabled;
            if (typeof data111 != "boolean") {
              let err212 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/16/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[16].properties.enabled.type, parentSchema: schema207.oneOf[16].properties.enabled, data: data111 };
              vErrors === null ? vErrors = [err212] : vErrors.push(err212), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data.server !== void 0) {
            let data113 = data.server;
            if (typeof data113 == "string") {
              if (func10(data113) < 1) {
                let err213 = { instancePath: instancePath + "/server", schemaPath: "#/oneOf/16/properties/server/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema207.oneOf[16].properties.server, data: data113 };
                vErrors === null ? vErrors = [err213] : vErrors.push(err213), errors++;
              }
            } else {
              let err214 = { instancePath: instancePath + "/server", schemaPath: "#/oneOf/16/properties/server/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[16].properties.server.type, parentSchema: schema207.oneOf[16].properties.server, data: data113 };
              vErrors === null ? vErrors = [err214] : vErrors.push(err214), errors++;
            }
          }
          if (data.volume !== void 0) {
            let data114 = data.volume;
            if (typeof data114 == "string") {
              if (func10(data114) < 1) {
                let err215 = { instancePath: instancePath + "/volume", schemaPath: "#/oneOf/16/properties/volume/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema207.oneOf[16].properties.volume, data: data114 };
                vErrors === null ? vErrors = [err215] : vErrors.push(err215), errors++;
              }
            } else {
              let err216 = { instancePath: instancePath + "/volume", schemaPath: "#/oneOf/16/properties/volume/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[16].properties.volume.type, parentSchema: schema207.oneOf[16].properties.volume, data: data114 };
              vErrors === null ? vErrors = [err216] : vErrors.push(err216), errors++;
            }
          }
          if (data["volume-group"] !== void 0) {
            let data115 = data["volume-group"];
            if (typeof data115 == "string") {
              if (func10(data115) < 1) {
                let err217 = { instancePath: instancePath + "/volume-group", schemaPath: "#/oneOf/16/properties/volume-group/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema207.oneOf[16].properties["volume-group"], data: data115 };
                vErrors === null ? vErrors = [err217] : vErrors.push(err217), errors++;
              }
            } else {
              let err218 = { instancePath: instancePath + "/volume-group", schemaPath: "#/oneOf/16/properties/volume-group/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[16].properties["volume-group"].type, parentSchema: schema207.oneOf[16].properties["volume-group"], data: data115 };
              vErrors === null ? vErrors = [err218] : vErrors.push(err218), errors++;
            }
          }
          if (data.mount !== void 0) {
            let data116 = data.mount;
            if (typeof data116 == "string") {
              if (func10(data116) < 1) {
                let err219 = { instancePath: instancePath + "/mount", schemaPath: "#/oneOf/16/properties/mount/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema207.oneOf[16].properties.mount, data: data116 };
                vErrors === null ? vErrors = [err219] : vErrors.push(err219), errors++;
              }
            } else {
              let err220 = { instancePath: instancePath + "/mount", schemaPath: "#/oneOf/16/properties/mount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[16].properties.mount.type, parentSchema: schema207.oneOf[16].properties.mount, data: data116 };
              vErrors === null ? vErrors = [err220] : vErrors.push(err220), errors++;
            }
          }
        } else {
          let err221 = { instancePath, schemaPath: "#/oneOf/16/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[16].type, parentSchema: schema207.oneOf[16], data };
          vErrors === null ? vErrors = [err221] : vErrors.push(err221), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "no-stale-rename") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err222 = { instancePath, schemaPath: "#/oneOf/17/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[17].required, parentSchema: schema207.oneOf[17], data };
            vErrors === null ? vErrors = [err222] : vErrors.push(err222), errors++;
          }
          for (let key17 in data)
            if (!(key17 === "rule" || key17 === "name" || key17 === "level" || key17 === "enabled" || key17 === "where")) {
              let err223 = { instancePath, schemaPath: "#/oneOf/17/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key17 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[17], data };
              vErrors === null ? vErrors = [err223] : vErrors.push(err223), errors++;
            }
          if (data.rule !== void 0) {
            let data117 = data.rule;
            if (data117 !== "no-stale-rename") {
              let err224 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/17/properties/rule/const", keyword: "const", params: { allowedValue: "no-stale-rename" }, message: "must be equal to constant", schema: "no-stale-rename", parentSchema: schema207.oneOf[17].properties.rule, data: data117 };
              vErrors === null ? vErrors = [err224] : vErrors.push(err224), errors++;
            }
          }
          if (data.name !== void 0) {
            let data118 = data.name;
            if (typeof data118 == "string") {
              if (!pattern13.test(data118)) {
                let err225 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data118 };
                vErrors === null ? vErrors = [err225] : vErrors.push(err225), errors++;
              }
            } else {
              let err226 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data118 };
              vErrors === null ? vErrors = [err226] : vErrors.push(err226), errors++;
            }
          }
          if (data.level !== void 0) {
            let data119 = data.level;
            if (typeof data119 != "string") {
              let err227 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/17/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[17].properties.level.type, parentSchema: schema207.oneOf[17].properties.level, data: data119 };
              vErrors === null ? vErrors = [err227] : vErrors.push(err227), errors++;
            }
            if (!(data119 === "error" || data119 === "warning" || data119 === "note")) {
              let err228 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/17/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[17].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[17].properties.level.enum, parentSchema: schema207.oneOf[17].properties.level, data: data119 };
              vErrors === null ? vErrors = [err228] : vErrors.push(err228), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data120 = data.enabled;
            if (typeof data120 != "boolean") {
              let err229 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/17/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[17].properties.enabled.type, parentSchema: schema207.oneOf[17].properties.enabled, data: data120 };
              vErrors === null ? vErrors = [err229] : vErrors.push(err229), errors++;
            }
          }
          data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length));
        } else {
          let err230 = { instancePath, schemaPath: "#/oneOf/17/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[17].type, parentSchema: schema207.oneOf[17], data };
          vErrors === null ? vErrors = [err230] : vErrors.push(err230), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "shape") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err231 = { instancePath, schemaPath: "#/oneOf/18/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[18].required, parentSchema: schema207.oneOf[18], data };
            vErrors === null ? vErrors = [err231] : vErrors.push(err231), errors++;
          }
          if (data.schema === void 0) {
            let err232 = { instancePath, schemaPath: "#/oneOf/18/required", keyword: "required", params: { missingProperty: "schema" }, message: "must have required property 'schema'", schema: schema207.oneOf[18].required, parentSchema: schema207.oneOf[18], data };
            vErrors === null ? vErrors = [err232] : vErrors.push(err232), errors++;
          }
          if (data.of === void 0) {
            let err233 = { instancePath, schemaPath: "#/oneOf/18/required", keyword: "required", params: { missingProperty: "of" }, message: "must have required property 'of'", schema: schema207.oneOf[18].required, parentSchema: schema207.oneOf[18], data };
            vErrors === null ? vErrors = [err233] : vErrors.push(err233), errors++;
          }
          for (let key18 in data)
            if (!func1.call(schema207.oneOf[18].properties, key18)) {
              let err234 = { instancePath, schemaPath: "#/oneOf/18/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key18 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[18], data };
              vErrors === null ? vErrors = [err234] : vErrors.push(err234), errors++;
            }
          if (data.rule !== void 0) {
            let data122 = data.rule;
            if (data122 !== "shape") {
              let err235 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/18/properties/rule/const", keyword: "const", params: { allowedValue: "shape" }, message: "must be equal to constant", schema: "shape", parentSchema: schema207.oneOf[18].properties.rule, data: data122 };
              vErrors === null ? vErrors = [err235] : vErrors.push(err235), errors++;
            }
          }
          if (data.name !== void 0) {
            let data123 = data.name;
            if (typeof data123 == "string") {
              if (!pattern13.test(data123)) {
                let err236 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data123 };
                vErrors === null ? vErrors = [err236] : vErrors.push(err236), errors++;
              }
            } else {
              let err237 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data123 };
              vErrors === null ? vErrors = [err237] : vErrors.push(err237), errors++;
            }
          }
          if (data.level !== void 0) {
            let data124 = data.level;
            if (typeof data124 != "string") {
              let err238 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/18/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[18].properties.level.type, parentSchema: schema207.oneOf[18].properties.level, data: data124 };
              vErrors === null ? vErrors = [err238] : vErrors.push(err238), errors++;
            }
            if (!(data124 === "error" || data124 === "warning" || data124 === "note")) {
              let err239 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/18/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[18].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[18].properties.level.enum, parentSchema: schema207.oneOf[18].properties.level, data: data124 };
              vErrors === null ? vErrors = [err239] : vErrors.push(err239), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data125 = data.enabled;
            if (typeof data125 != "boolean") {
              let err240 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/18/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[18].properties.enabled.type, parentSchema: schema207.oneOf[18].properties.enabled, data: data125 };
              vErrors === null ? vErrors = [err240] : vErrors.push(err240), errors++;
            }
          }
          if (data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length)), data.of !== void 0) {
            let data127 = data.of;
            if (typeof data127 != "string") {
              let err241 = { instancePath: instancePath + "/of", schemaPath: "#/oneOf/18/properties/of/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[18].properties.of.type, parentSchema: schema207.oneOf[18].properties.of, data: data127 };
              vErrors === null ? vErrors = [err241] : vErrors.push(err241), errors++;
            }
            if (!(data127 === "server" || data127 === "volume" || data127 === "volume-group" || data127 === "file-system" || data127 === "change")) {
              let err242 = { instancePath: instancePath + "/of", schemaPath: "#/oneOf/18/properties/of/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[18].properties.of.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[18].properties.of.enum, parentSchema: schema207.oneOf[18].properties.of, data: data127 };
              vErrors === null ? vErrors = [err242] : vErrors.push(err242), errors++;
            }
          }
          if (data.kinds !== void 0) {
            let data128 = data.kinds;
            if (Array.isArray(data128)) {
              if (data128.length < 1) {
                let err243 = { instancePath: instancePath + "/kinds", schemaPath: "#/oneOf/18/properties/kinds/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema207.oneOf[18].properties.kinds, data: data128 };
                vErrors === null ? vErrors = [err243] : vErrors.push(err243), errors++;
              }
              let len1 = data128.length;
              for (let i1 = 0; i1 < len1; i1++) {
                let data129 = data128[i1];
                if (typeof data129 != "string") {
                  let err244 = { instancePath: instancePath + "/kinds/" + i1, schemaPath: "#/oneOf/18/properties/kinds/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[18].properties.kinds.items.type, parentSchema: schema207.oneOf[18].properties.kinds.items, data: data129 };
                  vErrors === null ? vErrors = [err244] : vErrors.push(err244), errors++;
                }
                if (!(data129 === "server-created" || data129 === "server-adopted" || data129 === "server-renamed" || data129 === "server-changed-id" || data129 === "server-changed-team" || data129 === "server-moved-site" || data129 === "server-changed-type" || data129 === "server-started" || data129 === "server-stopped" || data129 === "boot-swapped" || data129 === "server-edited" || data129 === "server-deleted" || data129 === "volume-created" || data129 === "volume-adopted" || data129 === "volume-re-created" || data129 === "volume-renamed" || data129 === "volume-changed-id" || data129 === "volume-changed-team" || data129 === "volume-moved-site" || data129 === "volume-moved-tier" || data129 === "volume-grown" || data129 === "volume-shrunk" || data129 === "volume-corrected" || data129 === "volume-unprotected" || data129 === "volume-edited" || data129 === "handed-over" || data129 === "detached" || data129 === "attached" || data129 === "attachment-adopted" || data129 === "volume-deleted" || data129 === "group-created" || data129 === "group-adopted" || data129 === "group-renamed" || data129 === "member-left" || data129 === "member-joined" || data129 === "member-adopted" || data129 === "group-edited" || data129 === "group-deleted" || data129 === "file-system-created" || data129 === "file-system-adopted" || data129 === "file-system-remounted" || data129 === "file-system-edited" || data129 === "file-system-remade" || data129 === "file-system-grown" || data129 === "file-system-shrunk" || data129 === "file-system-corrected" || data129 === "file-system-deleted")) {
                  let err245 = { instancePath: instancePath + "/kinds/" + i1, schemaPath: "#/oneOf/18/properties/kinds/items/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[18].properties.kinds.items.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[18].properties.kinds.items.enum, parentSchema: schema207.oneOf[18].properties.kinds.items, data: data129 };
                  vErrors === null ? vErrors = [err245] : vErrors.push(err245), errors++;
                }
              }
            } else {
              let err246 = { instancePath: instancePath + "/kinds", schemaPath: "#/oneOf/18/properties/kinds/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema207.oneOf[18].properties.kinds.type, parentSchema: schema207.oneOf[18].properties.kinds, data: data128 };
              vErrors === null ? vErrors = [err246] : vErrors.push(err246), errors++;
            }
          }
          if (data.schema !== void 0) {
            let data130 = data.schema;
            if (!(data130 && typeof data130 == "object" && !Array.isArray(data130))) {
              let err247 = { instancePath: instancePath + "/schema", schemaPath: "#/oneOf/18/properties/schema/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[18].properties.schema.type, parentSchema: schema207.oneOf[18].properties.schema, data: data130 };
              vErrors === null ? vErrors = [err247] : vErrors.push(err247), errors++;
            }
          }
          if (data.message !== void 0) {
            let data131 = data.message;
            if (typeof data131 == "string") {
              if (!pattern28.test(data131)) {
                let err248 = { instancePath: instancePath + "/message", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema94, data: data131 };
                vErrors === null ? vErrors = [err248] : vErrors.push(err248), errors++;
              }
            } else {
              let err249 = { instancePath: instancePath + "/message", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema94.type, parentSchema: schema94, data: data131 };
              vErrors === null ? vErrors = [err249] : vErrors.push(err249), errors++;
            }
          }
        } else {
          let err250 = { instancePath, schemaPath: "#/oneOf/18/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[18].type, parentSchema: schema207.oneOf[18], data };
          vErrors === null ? vErrors = [err250] : vErrors.push(err250), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "tier-bounds") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err251 = { instancePath, schemaPath: "#/oneOf/19/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[19].required, parentSchema: schema207.oneOf[19], data };
            vErrors === null ? vErrors = [err251] : vErrors.push(err251), errors++;
          }
          for (let key19 in data)
            if (!(key19 === "rule" || key19 === "name" || key19 === "level" || key19 === "enabled" || key19 === "where")) {
              let err252 = { instancePath, schemaPath: "#/oneOf/19/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key19 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[19], data };
              vErrors === null ? vErrors = [err252] : vErrors.push(err252), errors++;
            }
          if (data.rule !== void 0) {
            let data132 = data.rule;
            if (data132 !== "tier-bounds") {
              let err253 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/19/properties/rule/const", keyword: "const", params: { allowedValue: "tier-bounds" }, message: "must be equal to constant", schema: "tier-bounds", parentSchema: schema207.oneOf[19].properties.rule, data: data132 };
              vErrors === null ? vErrors = [err253] : vErrors.push(err253), errors++;
            }
          }
          if (data.name !== void 0) {
            let data133 = data.name;
            if (typeof data133 == "string") {
              if (!pattern13.test(data133)) {
                let err254 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data133 };
                vErrors === null ? vErrors = [err254] : vErrors.push(err254), errors++;
              }
            } else {
              let err255 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data133 };
              vErrors === null ? vErrors = [err255] : vErrors.push(err255), errors++;
            }
          }
          if (data.level !== void 0) {
            let data134 = data.level;
            if (typeof data134 != "string") {
              let err256 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/19/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[19].properties.level.type, parentSchema: schema207.oneOf[19].properties.level, data: data134 };
              vErrors === null ? vErrors = [err256] : vErrors.push(err256), errors++;
            }
            if (!(data134 === "error" || data134 === "warning" || data134 === "note")) {
              let err257 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/19/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[19].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[19].properties.level.enum, parentSchema: schema207.oneOf[19].properties.level, data: data134 };
              vErrors === null ? vErrors = [err257] : vErrors.push(err257), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data135 = data.enabled;
            if (typeof data135 != "boolean") {
              let err258 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/19/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[19].properties.enabled.type, parentSchema: schema207.oneOf[19].properties.enabled, data: data135 };
              vErrors === null ? vErrors = [err258] : vErrors.push(err258), errors++;
            }
          }
          data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length));
        } else {
          let err259 = { instancePath, schemaPath: "#/oneOf/19/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[19].type, parentSchema: schema207.oneOf[19], data };
          vErrors === null ? vErrors = [err259] : vErrors.push(err259), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "policy-apart") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err260 = { instancePath, schemaPath: "#/oneOf/20/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema207.oneOf[20].required, parentSchema: schema207.oneOf[20], data };
            vErrors === null ? vErrors = [err260] : vErrors.push(err260), errors++;
          }
          for (let key20 in data)
            if (!(key20 === "rule" || key20 === "name" || key20 === "level" || key20 === "enabled" || key20 === "where")) {
              let err261 = { instancePath, schemaPath: "#/oneOf/20/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key20 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema207.oneOf[20], data };
              vErrors === null ? vErrors = [err261] : vErrors.push(err261), errors++;
            }
          if (data.rule !== void 0) {
            let data137 = data.rule;
            if (data137 !== "policy-apart") {
              let err262 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/20/properties/rule/const", keyword: "const", params: { allowedValue: "policy-apart" }, message: "must be equal to constant", schema: "policy-apart", parentSchema: schema207.oneOf[20].properties.rule, data: data137 };
              vErrors === null ? vErrors = [err262] : vErrors.push(err262), errors++;
            }
          }
          if (data.name !== void 0) {
            let data138 = data.name;
            if (typeof data138 == "string") {
              if (!pattern13.test(data138)) {
                let err263 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data138 };
                vErrors === null ? vErrors = [err263] : vErrors.push(err263), errors++;
              }
            } else {
              let err264 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data138 };
              vErrors === null ? vErrors = [err264] : vErrors.push(err264), errors++;
            }
          }
          if (data.level !== void 0) {
            let data139 = data.level;
            if (typeof data139 != "string") {
              let err265 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/20/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema207.oneOf[20].properties.level.type, parentSchema: schema207.oneOf[20].properties.level, data: data139 };
              vErrors === null ? vErrors = [err265] : vErrors.push(err265), errors++;
            }
            if (!(data139 === "error" || data139 === "warning" || data139 === "note")) {
              let err266 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/20/properties/level/enum", keyword: "enum", params: { allowedValues: schema207.oneOf[20].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema207.oneOf[20].properties.level.enum, parentSchema: schema207.oneOf[20].properties.level, data: data139 };
              vErrors === null ? vErrors = [err266] : vErrors.push(err266), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data140 = data.enabled;
            if (typeof data140 != "boolean") {
              let err267 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/20/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema207.oneOf[20].properties.enabled.type, parentSchema: schema207.oneOf[20].properties.enabled, data: data140 };
              vErrors === null ? vErrors = [err267] : vErrors.push(err267), errors++;
            }
          }
          data.where !== void 0 && (validate168(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors), errors = vErrors.length));
        } else {
          let err268 = { instancePath, schemaPath: "#/oneOf/20/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.oneOf[20].type, parentSchema: schema207.oneOf[20], data };
          vErrors === null ? vErrors = [err268] : vErrors.push(err268), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else {
        let err269 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "mapping", tag: "rule", tagValue: tag0 }, message: 'value of tag "rule" must be in oneOf', schema: schema207.discriminator, parentSchema: schema207, data };
        vErrors === null ? vErrors = [err269] : vErrors.push(err269), errors++;
      }
    else {
      let err270 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "tag", tag: "rule", tagValue: tag0 }, message: 'tag "rule" must be string', schema: schema207.discriminator, parentSchema: schema207, data };
      vErrors === null ? vErrors = [err270] : vErrors.push(err270), errors++;
    }
  } else {
    let err271 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema207.type, parentSchema: schema207, data };
    vErrors === null ? vErrors = [err271] : vErrors.push(err271), errors++;
  }
  return validate167.errors = vErrors, evaluated0.props = props0, errors === 0;
}
validate167.evaluated = { dynamicProps: !0, dynamicItems: !1 };
function validate166(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate166.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    for (let key0 in data)
      if (!(key0 === "use" || key0 === "rules")) {
        let err0 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema205, data };
        vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
      }
    if (data.use !== void 0) {
      let data0 = data.use;
      if (Array.isArray(data0)) {
        let len0 = data0.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data1 = data0[i0];
          if (typeof data1 == "string") {
            if (!pattern13.test(data1)) {
              let err1 = { instancePath: instancePath + "/use/" + i0, schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data1 };
              vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
            }
          } else {
            let err2 = { instancePath: instancePath + "/use/" + i0, schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data1 };
            vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
          }
        }
      } else {
        let err3 = { instancePath: instancePath + "/use", schemaPath: "#/properties/use/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema205.properties.use.type, parentSchema: schema205.properties.use, data: data0 };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    }
    if (data.rules !== void 0) {
      let data2 = data.rules;
      if (Array.isArray(data2)) {
        let len1 = data2.length;
        for (let i1 = 0; i1 < len1; i1++)
          validate167(data2[i1], { instancePath: instancePath + "/rules/" + i1, parentData: data2, parentDataProperty: i1, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate167.errors : vErrors.concat(validate167.errors), errors = vErrors.length);
      } else {
        let err4 = { instancePath: instancePath + "/rules", schemaPath: "#/properties/rules/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema205.properties.rules.type, parentSchema: schema205.properties.rules, data: data2 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
  } else {
    let err5 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema205.type, parentSchema: schema205, data };
    vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
  }
  return validate166.errors = vErrors, errors === 0;
}
validate166.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var settings = validate195, schema243 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "settings.json", title: "SettingsFile", description: "ullage.yaml: where things are, the currency, the month, the sites.", type: "object", additionalProperties: !1, required: ["currency"], properties: { format: { enum: ["ullage-files-1"], default: "ullage-files-1", description: "The version of the formats that people write: of this file and of all estate files, price lists, rule packs, waivers, procedures and readings beside it." }, currency: { $ref: "common.json#/$defs/currency", description: "The one currency of the estate (ISO 4217). Price lists in another are refused." }, month: { type: "string", enum: ["730 h", "calendar"], default: "730 h", description: "How long a month is for prices by the hour: 730 h (8,760 h a year over 12, common practice), or the calendar month of the day of judgement." }, paths: { title: "SettingsPaths", type: "object", additionalProperties: !1, description: "Where things are, from the root of the repository; each defaults to the folder of its own name.", properties: { storage: { $ref: "#/$defs/folder", default: "storage", description: "Folder of the estate files, searched to any depth." }, prices: { $ref: "#/$defs/folder", default: "prices", description: "Folder of the price lists." }, policies: { $ref: "#/$defs/folder", default: "policies", description: "Folder of the rule packs." }, waivers: { $ref: "#/$defs/folder", default: "waivers", description: "Folder of the waivers." }, readings: { $ref: "#/$defs/folder", default: "readings", description: "Folder of the readings of measured use." }, surveys: { $ref: "#/$defs/folder", default: "surveys", description: "Folder of the surveys of what is really there." }, procedures: { $ref: "#/$defs/folder", default: "procedures", description: "Folder of your own procedures, for guests and providers." } } }, sites: { type: "object", propertyNames: { $ref: "common.json#/$defs/name", examples: ["north-quay"] }, description: "The sites, by name. Once any is listed, every server and volume names one of them.", additionalProperties: { title: "SiteSettings", type: "object", additionalProperties: !1, description: "What one site allows.", properties: { quota: { title: "QuotaSettings", type: "object", additionalProperties: !1, description: "What the provider allows this account at the site.", properties: { volumes: { type: "integer", minimum: 0, description: "How many volumes." }, size: { $ref: "common.json#/$defs/size", description: "The total capacity." } } }, "attachment-slots": { type: "integer", minimum: 0, description: "How many volumes can be attached to one server, its boot volume included." } } } }, teams: { type: "array", minItems: 1, uniqueItems: !0, items: { $ref: "common.json#/$defs/name" }, examples: [["imagery", "ledger"]], description: "The teams, by name. Once they are listed, every team that an estate file names must be one of them, and everything that is billed names one." }, packs: { type: "object", propertyNames: { $ref: "common.json#/$defs/name", examples: ["fleet"] }, description: "Rule packs that are kept in other Git repositories, by the names under which `use:` takes them. Only these very bytes are taken: a pack that is not at hand, or has another digest, is not judged by. `ullage policy hold` writes an entry, and `ullage policy fetch` fetches what is listed. At most 50.", additionalProperties: { title: "PackSettings", type: "object", additionalProperties: !1, required: ["repository", "commit", "path", "sha256"], description: "One pack: where it is kept, and which of its versions is meant.", properties: { repository: { $ref: "#/$defs/repositoryAddress", description: "The repository's URL: https://, ssh:// or file:///, a host by its name, no password, no space, and only characters that a URL may hold (RFC 3986)." }, commit: { $ref: "#/$defs/commitId", description: "The commit's id, in full." }, path: { $ref: "#/$defs/folder", description: "The file, from the root of that repository.", examples: ["policies/fleet.yaml"] }, sha256: { $ref: "#/$defs/digest", description: "The SHA-256 digest of the file's content (FIPS 180-4), in lower-case hexadecimal." } } } }, "provider-list": { title: "ProviderListSettings", type: "object", additionalProperties: !1, description: "Which field of the provider's list of volumes and servers is which, for `ullage survey provider`: a column's name in CSV, a JSON Pointer (RFC 6901) in JSON and NDJSON.", properties: { volumes: { title: "ProviderVolumeFields", type: "object", additionalProperties: !1, required: ["size"], description: "The fields of a volume.", properties: { rows: { $ref: "#/$defs/field", description: "Where the list of volumes is in a JSON document, such as /volumes; the document itself if left out." }, id: { $ref: "#/$defs/field", description: "Its identifier." }, name: { $ref: "#/$defs/field", description: "Its name." }, size: { title: "ProviderSizeField", type: "object", additionalProperties: !1, required: ["field", "unit"], description: "Its size, and the unit of the figure.", properties: { field: { $ref: "#/$defs/field", description: "The figure." }, unit: { enum: ["B", "KiB", "MiB", "GiB", "TiB", "kB", "MB", "GB", "TB"], description: "The unit that the figure is in." } } }, tier: { $ref: "#/$defs/field", description: "Its tier." }, site: { $ref: "#/$defs/field", description: "Its site." }, server: { $ref: "#/$defs/field", description: "The identifier or the name of the server that it is attached to; in JSON it may be a list of them." }, boot: { $ref: "#/$defs/field", description: "Whether that server starts from it: true, yes or 1." } } }, servers: { title: "ProviderServerFields", type: "object", additionalProperties: !1, description: "The fields of a server.", properties: { rows: { $ref: "#/$defs/field", description: "Where the list of servers is in a JSON document." }, id: { $ref: "#/$defs/field", description: "Its identifier." }, name: { $ref: "#/$defs/field", description: "Its name." }, site: { $ref: "#/$defs/field", description: "Its site." }, type: { $ref: "#/$defs/field", description: "Its server type." }, power: { $ref: "#/$defs/field", description: "Whether it runs." }, boot: { $ref: "#/$defs/field", description: "The identifier or the name of the volume that it starts from." } } }, tiers: { type: "object", additionalProperties: { $ref: "common.json#/$defs/name" }, description: "The provider's words for tiers, each with yours." }, sites: { type: "object", additionalProperties: { $ref: "common.json#/$defs/name" }, description: "The provider's words for sites, each with yours." }, types: { type: "object", additionalProperties: { $ref: "common.json#/$defs/name" }, description: "The provider's words for server types, each with yours." }, power: { type: "object", additionalProperties: { enum: ["running", "stopped"] }, description: "The provider's words for what runs and what is stopped." } } } }, $defs: { folder: { title: "Folder", type: "string", pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", description: "A folder inside the repository, written with / and without a leading / or any .. in it.", examples: ["storage"] }, repositoryAddress: { title: "Repository address", type: "string", maxLength: 2e3, pattern: "^(?!.*::)((https://|ssh://([A-Za-z0-9_][A-Za-z0-9._-]*@)?)[A-Za-z0-9][A-Za-z0-9.-]*(:[0-9]{1,5})?/|file:///)[A-Za-z0-9._~/%!$&'()*+,;=:@-]+$", description: "The repository's URL: https://, ssh:// or file:///, a host by its name, no password, no space, and only characters that a URL may hold (RFC 3986).", examples: ["https://git.example.org/fleet/storage-policy.git"] }, commitId: { title: "Commit id", type: "string", pattern: "^([0-9a-f]{40}|[0-9a-f]{64})$", description: "The commit's id, in full.", examples: ["8f3c1d2ab9e04c5f6a7b8091c2d3e4f5a6b7c8d9"] }, digest: { title: "Digest", type: "string", pattern: "^[0-9a-f]{64}$", description: "The SHA-256 digest of the file's content (FIPS 180-4), in lower-case hexadecimal.", examples: ["2c26b46b68ffc68ff99b453c1d30413413422d706483bfa0f98a5e886266e7ae"] }, field: { title: "ListField", type: "string", minLength: 1, maxLength: 200, description: "A column's name, or a JSON Pointer such as /attachment/server." } } }, schema245 = { title: "Folder", type: "string", pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", description: "A folder inside the repository, written with / and without a leading / or any .. in it.", examples: ["storage"] }, schema256 = { title: "Repository address", type: "string", maxLength: 2e3, pattern: "^(?!.*::)((https://|ssh://([A-Za-z0-9_][A-Za-z0-9._-]*@)?)[A-Za-z0-9][A-Za-z0-9.-]*(:[0-9]{1,5})?/|file:///)[A-Za-z0-9._~/%!$&'()*+,;=:@-]+$", description: "The repository's URL: https://, ssh:// or file:///, a host by its name, no password, no space, and only characters that a URL may hold (RFC 3986).", examples: ["https://git.example.org/fleet/storage-policy.git"] }, schema257 = { title: "Commit id", type: "string", pattern: "^([0-9a-f]{40}|[0-9a-f]{64})$", description: "The commit's id, in full.", examples: ["8f3c1d2ab9e04c5f6a7b8091c2d3e4f5a6b7c8d9"] }, schema259 = { title: "Digest", type: "string", pattern: "^[0-9a-f]{64}$", description: "The SHA-256 digest of the file's content (FIPS 180-4), in lower-case hexadecimal.", examples: ["2c26b46b68ffc68ff99b453c1d30413413422d706483bfa0f98a5e886266e7ae"] }, schema260 = { title: "ListField", type: "string", minLength: 1, maxLength: 200, description: "A column's name, or a JSON Pointer such as /attachment/server." }, pattern162 = new RegExp("^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", "u"), pattern173 = new RegExp("^(?!.*::)((https://|ssh://([A-Za-z0-9_][A-Za-z0-9._-]*@)?)[A-Za-z0-9][A-Za-z0-9.-]*(:[0-9]{1,5})?/|file:///)[A-Za-z0-9._~/%!$&'()*+,;=:@-]+$", "u"), pattern174 = new RegExp("^([0-9a-f]{40}|[0-9a-f]{64})$", "u"), pattern176 = new RegExp("^[0-9a-f]{64}$", "u");
function validate195(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate195.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.currency === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "currency" }, message: "must have required property 'currency'", schema: schema243.required, parentSchema: schema243, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "format" || key0 === "currency" || key0 === "month" || key0 === "paths" || key0 === "sites" || key0 === "teams" || key0 === "packs" || key0 === "provider-list")) {
        let err1 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema243, data };
        vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
      }
    if (data.format !== void 0) {
      let data0 = data.format;
      if (data0 !== "ullage-files-1") {
        let err2 = { instancePath: instancePath + "/format", schemaPath: "#/properties/format/enum", keyword: "enum", params: { allowedValues: schema243.properties.format.enum }, message: "must be equal to one of the allowed values", schema: schema243.properties.format.enum, parentSchema: schema243.properties.format, data: data0 };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    }
    if (data.currency !== void 0) {
      let data1 = data.currency;
      if (typeof data1 == "string") {
        if (!pattern87.test(data1)) {
          let err3 = { instancePath: instancePath + "/currency", schemaPath: "common.json#/$defs/currency/pattern", keyword: "pattern", params: { pattern: "^[A-Z]{3}$" }, message: 'must match pattern "^[A-Z]{3}$"', schema: "^[A-Z]{3}$", parentSchema: schema160, data: data1 };
          vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
        }
      } else {
        let err4 = { instancePath: instancePath + "/currency", schemaPath: "common.json#/$defs/currency/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema160.type, parentSchema: schema160, data: data1 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
    if (data.month !== void 0) {
      let data2 = data.month;
      if (typeof data2 != "string") {
        let err5 = { instancePath: instancePath + "/month", schemaPath: "#/properties/month/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema243.properties.month.type, parentSchema: schema243.properties.month, data: data2 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
      if (!(data2 === "730 h" || data2 === "calendar")) {
        let err6 = { instancePath: instancePath + "/month", schemaPath: "#/properties/month/enum", keyword: "enum", params: { allowedValues: schema243.properties.month.enum }, message: "must be equal to one of the allowed values", schema: schema243.properties.month.enum, parentSchema: schema243.properties.month, data: data2 };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    }
    if (data.paths !== void 0) {
      let data3 = data.paths;
      if (data3 && typeof data3 == "object" && !Array.isArray(data3)) {
        for (let key1 in data3)
          if (!(key1 === "storage" || key1 === "prices" || key1 === "policies" || key1 === "waivers" || key1 === "readings" || key1 === "surveys" || key1 === "procedures")) {
            let err7 = { instancePath: instancePath + "/paths", schemaPath: "#/properties/paths/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema243.properties.paths, data: data3 };
            vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
          }
        if (data3.storage !== void 0) {
          let data4 = data3.storage;
          if (typeof data4 == "string") {
            if (!pattern162.test(data4)) {
              let err8 = { instancePath: instancePath + "/paths/storage", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema245, data: data4 };
              vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
            }
          } else {
            let err9 = { instancePath: instancePath + "/paths/storage", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema245.type, parentSchema: schema245, data: data4 };
            vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
          }
        }
        if (data3.prices !== void 0) {
          let data5 = data3.prices;
          if (typeof data5 == "string") {
            if (!pattern162.test(data5)) {
              let err10 = { instancePath: instancePath + "/paths/prices", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema245, data: data5 };
              vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
            }
          } else {
            let err11 = { instancePath: instancePath + "/paths/prices", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema245.type, parentSchema: schema245, data: data5 };
            vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
          }
        }
        if (data3.policies !== void 0) {
          let data6 = data3.policies;
          if (typeof data6 == "string") {
            if (!pattern162.test(data6)) {
              let err12 = { instancePath: instancePath + "/paths/policies", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema245, data: data6 };
              vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
            }
          } else {
            let err13 = { instancePath: instancePath + "/paths/policies", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema245.type, parentSchema: schema245, data: data6 };
            vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
          }
        }
        if (data3.waivers !== void 0) {
          let data7 = data3.waivers;
          if (typeof data7 == "string") {
            if (!pattern162.test(data7)) {
              let err14 = { instancePath: instancePath + "/paths/waivers", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema245, data: data7 };
              vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
            }
          } else {
            let err15 = { instancePath: instancePath + "/paths/waivers", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema245.type, parentSchema: schema245, data: data7 };
            vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
          }
        }
        if (data3.readings !== void 0) {
          let data8 = data3.readings;
          if (typeof data8 == "string") {
            if (!pattern162.test(data8)) {
              let err16 = { instancePath: instancePath + "/paths/readings", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema245, data: data8 };
              vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
            }
          } else {
            let err17 = { instancePath: instancePath + "/paths/readings", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema245.type, parentSchema: schema245, data: data8 };
            vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
          }
        }
        if (data3.surveys !== void 0) {
          let data9 = data3.surveys;
          if (typeof data9 == "string") {
            if (!pattern162.test(data9)) {
              let err18 = { instancePath: instancePath + "/paths/surveys", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema245, data: data9 };
              vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
            }
          } else {
            let err19 = { instancePath: instancePath + "/paths/surveys", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema245.type, parentSchema: schema245, data: data9 };
            vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
          }
        }
        if (data3.procedures !== void 0) {
          let data10 = data3.procedures;
          if (typeof data10 == "string") {
            if (!pattern162.test(data10)) {
              let err20 = { instancePath: instancePath + "/paths/procedures", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema245, data: data10 };
              vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
            }
          } else {
            let err21 = { instancePath: instancePath + "/paths/procedures", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema245.type, parentSchema: schema245, data: data10 };
            vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
          }
        }
      } else {
        let err22 = { instancePath: instancePath + "/paths", schemaPath: "#/properties/paths/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties.paths.type, parentSchema: schema243.properties.paths, data: data3 };
        vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
      }
    }
    if (data.sites !== void 0) {
      let data11 = data.sites;
      if (data11 && typeof data11 == "object" && !Array.isArray(data11)) {
        for (let key2 in data11) {
          let _errs34 = errors;
          if (typeof key2 == "string") {
            if (!pattern13.test(key2)) {
              let err23 = { instancePath: instancePath + "/sites", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: key2, propertyName: key2 };
              vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
            }
          } else {
            let err24 = { instancePath: instancePath + "/sites", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: key2, propertyName: key2 };
            vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
          }
          var valid10 = _errs34 === errors;
          if (!valid10) {
            let err25 = { instancePath: instancePath + "/sites", schemaPath: "#/properties/sites/propertyNames", keyword: "propertyNames", params: { propertyName: key2 }, message: "property name must be valid", schema: schema243.properties.sites.propertyNames, parentSchema: schema243.properties.sites, data: data11 };
            vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
          }
        }
        for (let key3 in data11) {
          let data12 = data11[key3];
          if (data12 && typeof data12 == "object" && !Array.isArray(data12)) {
            for (let key4 in data12)
              if (!(key4 === "quota" || key4 === "attachment-slots")) {
                let err26 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/sites/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key4 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema243.properties.sites.additionalProperties, data: data12 };
                vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
              }
            if (data12.quota !== void 0) {
              let data13 = data12.quota;
              if (data13 && typeof data13 == "object" && !Array.isArray(data13)) {
                for (let key5 in data13)
                  if (!(key5 === "volumes" || key5 === "size")) {
                    let err27 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota", schemaPath: "#/properties/sites/additionalProperties/properties/quota/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key5 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema243.properties.sites.additionalProperties.properties.quota, data: data13 };
                    vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
                  }
                if (data13.volumes !== void 0) {
                  let data14 = data13.volumes;
                  if (!(typeof data14 == "number" && !(data14 % 1) && !isNaN(data14) && isFinite(data14))) {
                    let err28 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota/volumes", schemaPath: "#/properties/sites/additionalProperties/properties/quota/properties/volumes/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema243.properties.sites.additionalProperties.properties.quota.properties.volumes.type, parentSchema: schema243.properties.sites.additionalProperties.properties.quota.properties.volumes, data: data14 };
                    vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
                  }
                  if (typeof data14 == "number" && isFinite(data14) && (data14 < 0 || isNaN(data14))) {
                    let err29 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota/volumes", schemaPath: "#/properties/sites/additionalProperties/properties/quota/properties/volumes/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema243.properties.sites.additionalProperties.properties.quota.properties.volumes, data: data14 };
                    vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
                  }
                }
                if (data13.size !== void 0) {
                  let data15 = data13.size;
                  if (typeof data15 == "string") {
                    if (!pattern26.test(data15)) {
                      let err30 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota/size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema92, data: data15 };
                      vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
                    }
                  } else {
                    let err31 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota/size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema92.type, parentSchema: schema92, data: data15 };
                    vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
                  }
                }
              } else {
                let err32 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota", schemaPath: "#/properties/sites/additionalProperties/properties/quota/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties.sites.additionalProperties.properties.quota.type, parentSchema: schema243.properties.sites.additionalProperties.properties.quota, data: data13 };
                vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
              }
            }
            if (data12["attachment-slots"] !== void 0) {
              let data16 = data12["attachment-slots"];
              if (!(typeof data16 == "number" && !(data16 % 1) && !isNaN(data16) && isFinite(data16))) {
                let err33 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/attachment-slots", schemaPath: "#/properties/sites/additionalProperties/properties/attachment-slots/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema243.properties.sites.additionalProperties.properties["attachment-slots"].type, parentSchema: schema243.properties.sites.additionalProperties.properties["attachment-slots"], data: data16 };
                vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
              }
              if (typeof data16 == "number" && isFinite(data16) && (data16 < 0 || isNaN(data16))) {
                let err34 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/attachment-slots", schemaPath: "#/properties/sites/additionalProperties/properties/attachment-slots/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema243.properties.sites.additionalProperties.properties["attachment-slots"], data: data16 };
                vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
              }
            }
          } else {
            let err35 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/sites/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties.sites.additionalProperties.type, parentSchema: schema243.properties.sites.additionalProperties, data: data12 };
            vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
          }
        }
      } else {
        let err36 = { instancePath: instancePath + "/sites", schemaPath: "#/properties/sites/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties.sites.type, parentSchema: schema243.properties.sites, data: data11 };
        vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
      }
    }
    if (data.teams !== void 0) {
      let data17 = data.teams;
      if (Array.isArray(data17)) {
        if (data17.length < 1) {
          let err37 = { instancePath: instancePath + "/teams", schemaPath: "#/properties/teams/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema243.properties.teams, data: data17 };
          vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
        }
        let len0 = data17.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data18 = data17[i0];
          if (typeof data18 == "string") {
            if (!pattern13.test(data18)) {
              let err38 = { instancePath: instancePath + "/teams/" + i0, schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data18 };
              vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
            }
          } else {
            let err39 = { instancePath: instancePath + "/teams/" + i0, schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data18 };
            vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
          }
        }
        let i1 = data17.length, j0;
        if (i1 > 1) {
          outer0: for (; i1--; )
            for (j0 = i1; j0--; )
              if (func0(data17[i1], data17[j0])) {
                let err40 = { instancePath: instancePath + "/teams", schemaPath: "#/properties/teams/uniqueItems", keyword: "uniqueItems", params: { i: i1, j: j0 }, message: "must NOT have duplicate items (items ## " + j0 + " and " + i1 + " are identical)", schema: !0, parentSchema: schema243.properties.teams, data: data17 };
                vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
                break outer0;
              }
        }
      } else {
        let err41 = { instancePath: instancePath + "/teams", schemaPath: "#/properties/teams/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema243.properties.teams.type, parentSchema: schema243.properties.teams, data: data17 };
        vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
      }
    }
    if (data.packs !== void 0) {
      let data19 = data.packs;
      if (data19 && typeof data19 == "object" && !Array.isArray(data19)) {
        for (let key6 in data19) {
          let _errs58 = errors;
          if (typeof key6 == "string") {
            if (!pattern13.test(key6)) {
              let err42 = { instancePath: instancePath + "/packs", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: key6, propertyName: key6 };
              vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
            }
          } else {
            let err43 = { instancePath: instancePath + "/packs", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: key6, propertyName: key6 };
            vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
          }
          var valid20 = _errs58 === errors;
          if (!valid20) {
            let err44 = { instancePath: instancePath + "/packs", schemaPath: "#/properties/packs/propertyNames", keyword: "propertyNames", params: { propertyName: key6 }, message: "property name must be valid", schema: schema243.properties.packs.propertyNames, parentSchema: schema243.properties.packs, data: data19 };
            vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
          }
        }
        for (let key7 in data19) {
          let data20 = data19[key7];
          if (data20 && typeof data20 == "object" && !Array.isArray(data20)) {
            if (data20.repository === void 0) {
              let err45 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/packs/additionalProperties/required", keyword: "required", params: { missingProperty: "repository" }, message: "must have required property 'repository'", schema: schema243.properties.packs.additionalProperties.required, parentSchema: schema243.properties.packs.additionalProperties, data: data20 };
              vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
            }
            if (data20.commit === void 0) {
              let err46 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/packs/additionalProperties/required", keyword: "required", params: { missingProperty: "commit" }, message: "must have required property 'commit'", schema: schema243.properties.packs.additionalProperties.required, parentSchema: schema243.properties.packs.additionalProperties, data: data20 };
              vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
            }
            if (data20.path === void 0) {
              let err47 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/packs/additionalProperties/required", keyword: "required", params: { missingProperty: "path" }, message: "must have required property 'path'", schema: schema243.properties.packs.additionalProperties.required, parentSchema: schema243.properties.packs.additionalProperties, data: data20 };
              vErrors === null ? vErrors = [err47] : vErrors.push(err47), errors++;
            }
            if (data20.sha256 === void 0) {
              let err48 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/packs/additionalProperties/required", keyword: "required", params: { missingProperty: "sha256" }, message: "must have required property 'sha256'", schema: schema243.properties.packs.additionalProperties.required, parentSchema: schema243.properties.packs.additionalProperties, data: data20 };
              vErrors === null ? vErrors = [err48] : vErrors.push(err48), errors++;
            }
            for (let key8 in data20)
              if (!(key8 === "repository" || key8 === "commit" || key8 === "path" || key8 === "sha256")) {
                let err49 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/packs/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key8 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema243.properties.packs.additionalProperties, data: data20 };
                vErrors === null ? vErrors = [err49] : vErrors.push(err49), errors++;
              }
            if (data20.repository !== void 0) {
              let data21 = data20.repository;
              if (typeof data21 == "string") {
                if (func10(data21) > 2e3) {
                  let err50 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1") + "/repository", schemaPath: "#/$defs/repositoryAddress/maxLength", keyword: "maxLength", params: { limit: 2e3 }, message: "must NOT have more than 2000 characters", schema: 2e3, parentSchema: schema256, data: data21 };
                  vErrors === null ? vErrors = [err50] : vErrors.push(err50), errors++;
                }
                if (!pattern173.test(data21)) {
                  let err51 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1") + "/repository", schemaPath: "#/$defs/repositoryAddress/pattern", keyword: "pattern", params: { pattern: "^(?!.*::)((https://|ssh://([A-Za-z0-9_][A-Za-z0-9._-]*@)?)[A-Za-z0-9][A-Za-z0-9.-]*(:[0-9]{1,5})?/|file:///)[A-Za-z0-9._~/%!$&'()*+,;=:@-]+$" }, message: `must match pattern "^(?!.*::)((https://|ssh://([A-Za-z0-9_][A-Za-z0-9._-]*@)?)[A-Za-z0-9][A-Za-z0-9.-]*(:[0-9]{1,5})?/|file:///)[A-Za-z0-9._~/%!$&'()*+,;=:@-]+$"`, schema: "^(?!.*::)((https://|ssh://([A-Za-z0-9_][A-Za-z0-9._-]*@)?)[A-Za-z0-9][A-Za-z0-9.-]*(:[0-9]{1,5})?/|file:///)[A-Za-z0-9._~/%!$&'()*+,;=:@-]+$", parentSchema: schema256, data: data21 };
                  vErrors === null ? vErrors = [err51] : vErrors.push(err51), errors++;
                }
              } else {
                let err52 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1") + "/repository", schemaPath: "#/$defs/repositoryAddress/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema256.type, parentSchema: schema256, data: data21 };
                vErrors === null ? vErrors = [err52] : vErrors.push(err52), errors++;
              }
            }
            if (data20.commit !== void 0) {
              let data22 = data20.commit;
              if (typeof data22 == "string") {
                if (!pattern174.test(data22)) {
                  let err53 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1") + "/commit", schemaPath: "#/$defs/commitId/pattern", keyword: "pattern", params: { pattern: "^([0-9a-f]{40}|[0-9a-f]{64})$" }, message: 'must match pattern "^([0-9a-f]{40}|[0-9a-f]{64})$"', schema: "^([0-9a-f]{40}|[0-9a-f]{64})$", parentSchema: schema257, data: data22 };
                  vErrors === null ? vErrors = [err53] : vErrors.push(err53), errors++;
                }
              } else {
                let err54 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1") + "/commit", schemaPath: "#/$defs/commitId/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema257.type, parentSchema: schema257, data: data22 };
                vErrors === null ? vErrors = [err54] : vErrors.push(err54), errors++;
              }
            }
            if (data20.path !== void 0) {
              let data23 = data20.path;
              if (typeof data23 == "string") {
                if (!pattern162.test(data23)) {
                  let err55 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1") + "/path", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema245, data: data23 };
                  vErrors === null ? vErrors = [err55] : vErrors.push(err55), errors++;
                }
              } else {
                let err56 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1") + "/path", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema245.type, parentSchema: schema245, data: data23 };
                vErrors === null ? vErrors = [err56] : vErrors.push(err56), errors++;
              }
            }
            if (data20.sha256 !== void 0) {
              let data24 = data20.sha256;
              if (typeof data24 == "string") {
                if (!pattern176.test(data24)) {
                  let err57 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1") + "/sha256", schemaPath: "#/$defs/digest/pattern", keyword: "pattern", params: { pattern: "^[0-9a-f]{64}$" }, message: 'must match pattern "^[0-9a-f]{64}$"', schema: "^[0-9a-f]{64}$", parentSchema: schema259, data: data24 };
                  vErrors === null ? vErrors = [err57] : vErrors.push(err57), errors++;
                }
              } else {
                let err58 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1") + "/sha256", schemaPath: "#/$defs/digest/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema259.type, parentSchema: schema259, data: data24 };
                vErrors === null ? vErrors = [err58] : vErrors.push(err58), errors++;
              }
            }
          } else {
            let err59 = { instancePath: instancePath + "/packs/" + key7.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/packs/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties.packs.additionalProperties.type, parentSchema: schema243.properties.packs.additionalProperties, data: data20 };
            vErrors === null ? vErrors = [err59] : vErrors.push(err59), errors++;
          }
        }
      } else {
        let err60 = { instancePath: instancePath + "/packs", schemaPath: "#/properties/packs/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties.packs.type, parentSchema: schema243.properties.packs, data: data19 };
        vErrors === null ? vErrors = [err60] : vErrors.push(err60), errors++;
      }
    }
    if (data["provider-list"] !== void 0) {
      let data25 = data["provider-list"];
      if (data25 && typeof data25 == "object" && !Array.isArray(data25)) {
        for (let key9 in data25)
          if (!(key9 === "volumes" || key9 === "servers" || key9 === "tiers" || key9 === "sites" || key9 === "types" || key9 === "power")) {
            let err61 = { instancePath: instancePath + "/provider-list", schemaPath: "#/properties/provider-list/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key9 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema243.properties["provider-list"], data: data25 };
            vErrors === null ? vErrors = [err61] : vErrors.push(err61), errors++;
          }
        if (data25.volumes !== void 0) {
          let data26 = data25.volumes;
          if (data26 && typeof data26 == "object" && !Array.isArray(data26)) {
            if (data26.size === void 0) {
              let err62 = { instancePath: instancePath + "/provider-list/volumes", schemaPath: "#/properties/provider-list/properties/volumes/required", keyword: "required", params: { missingProperty: "size" }, message: "must have required property 'size'", schema: schema243.properties["provider-list"].properties.volumes.required, parentSchema: schema243.properties["provider-list"].properties.volumes, data: data26 };
              vErrors === null ? vErrors = [err62] : vErrors.push(err62), errors++;
            }
            for (let key10 in data26)
              if (!(key10 === "rows" || key10 === "id" || key10 === "name" || key10 === "size" || key10 === "tier" || key10 === "site" || key10 === "server" || key10 === "boot")) {
                let err63 = { instancePath: instancePath + "/provider-list/volumes", schemaPath: "#/properties/provider-list/properties/volumes/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key10 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema243.properties["provider-list"].properties.volumes, data: data26 };
                vErrors === null ? vErrors = [err63] : vErrors.push(err63), errors++;
              }
            if (data26.rows !== void 0) {
              let data27 = data26.rows;
              if (typeof data27 == "string") {
                if (func10(data27) > 200) {
                  let err64 = { instancePath: instancePath + "/provider-list/volumes/rows", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data27 };
                  vErrors === null ? vErrors = [err64] : vErrors.push(err64), errors++;
                }
                if (func10(data27) < 1) {
                  let err65 = { instancePath: instancePath + "/provider-list/volumes/rows", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data27 };
                  vErrors === null ? vErrors = [err65] : vErrors.push(err65), errors++;
                }
              } else {
                let err66 = { instancePath: instancePath + "/provider-list/volumes/rows", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data27 };
                vErrors === null ? vErrors = [err66] : vErrors.push(err66), errors++;
              }
            }
            if (data26.id !== void 0) {
              let data28 = data26.id;
              if (typeof data28 == "string") {
                if (func10(data28) > 200) {
                  let err67 = { instancePath: instancePath + "/provider-list/volumes/id", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data28 };
                  vErrors === null ? vErrors = [err67] : vErrors.push(err67), errors++;
                }
                if (func10(data28) < 1) {
                  let err68 = { instancePath: instancePath + "/provider-list/volumes/id", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data28 };
                  vErrors === null ? vErrors = [err68] : vErrors.push(err68), errors++;
                }
              } else {
                let err69 = { instancePath: instancePath + "/provider-list/volumes/id", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data28 };
                vErrors === null ? vErrors = [err69] : vErrors.push(err69), errors++;
              }
            }
            if (data26.name !== void 0) {
              let data29 = data26.name;
              if (typeof data29 == "string") {
                if (func10(data29) > 200) {
                  let err70 = { instancePath: instancePath + "/provider-list/volumes/name", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data29 };
                  vErrors === null ? vErrors = [err70] : vErrors.push(err70), errors++;
                }
                if (func10(data29) < 1) {
                  let err71 = { instancePath: instancePath + "/provider-list/volumes/name", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data29 };
                  vErrors === null ? vErrors = [err71] : vErrors.push(err71), errors++;
                }
              } else {
                let err72 = { instancePath: instancePath + "/provider-list/volumes/name", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data29 };
                vErrors === null ? vErrors = [err72] : vErrors.push(err72), errors++;
              }
            }
            if (data26.size !== void 0) {
              let data30 = data26.size;
              if (data30 && typeof data30 == "object" && !Array.isArray(data30)) {
                if (data30.field === void 0) {
                  let err73 = { instancePath: instancePath + "/provider-list/volumes/size", schemaPath: "#/properties/provider-list/properties/volumes/properties/size/required", keyword: "required", params: { missingProperty: "field" }, message: "must have required property 'field'", schema: schema243.properties["provider-list"].properties.volumes.properties.size.required, parentSchema: schema243.properties["provider-list"].properties.volumes.properties.size, data: data30 };
                  vErrors === null ? vErrors = [err73] : vErrors.push(err73), errors++;
                }
                if (data30.unit === void 0) {
                  let err74 = { instancePath: instancePath + "/provider-list/volumes/size", schemaPath: "#/properties/provider-list/properties/volumes/properties/size/required", keyword: "required", params: { missingProperty: "unit" }, message: "must have required property 'unit'", schema: schema243.properties["provider-list"].properties.volumes.properties.size.required, parentSchema: schema243.properties["provider-list"].properties.volumes.properties.size, data: data30 };
                  vErrors === null ? vErrors = [err74] : vErrors.push(err74), errors++;
                }
                for (let key11 in data30)
                  if (!(key11 === "field" || key11 === "unit")) {
                    let err75 = { instancePath: instancePath + "/provider-list/volumes/size", schemaPath: "#/properties/provider-list/properties/volumes/properties/size/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key11 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema243.properties["provider-list"].properties.volumes.properties.size, data: data30 };
                    vErrors === null ? vErrors = [err75] : vErrors.push(err75), errors++;
                  }
                if (data30.field !== void 0) {
                  let data31 = data30.field;
                  if (typeof data31 == "string") {
                    if (func10(data31) > 200) {
                      let err76 = { instancePath: instancePath + "/provider-list/volumes/size/field", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data31 };
                      vErrors === null ? vErrors = [err76] : vErrors.push(err76), errors++;
                    }
                    if (func10(data31) < 1) {
                      let err77 = { instancePath: instancePath + "/provider-list/volumes/size/field", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data31 };
                      vErrors === null ? vErrors = [err77] : vErrors.push(err77), errors++;
                    }
                  } else {
                    let err78 = { instancePath: instancePath + "/provider-list/volumes/size/field", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data31 };
                    vErrors === null ? vErrors = [err78] : vErrors.push(err78), errors++;
                  }
                }
                if (data30.unit !== void 0) {
                  let data32 = data30.unit;
                  if (!(data32 === "B" || data32 === "KiB" || data32 === "MiB" || data32 === "GiB" || data32 === "TiB" || data32 === "kB" || data32 === "MB" || data32 === "GB" || data32 === "TB")) {
                    let err79 = { instancePath: instancePath + "/provider-list/volumes/size/unit", schemaPath: "#/properties/provider-list/properties/volumes/properties/size/properties/unit/enum", keyword: "enum", params: { allowedValues: schema243.properties["provider-list"].properties.volumes.properties.size.properties.unit.enum }, message: "must be equal to one of the allowed values", schema: schema243.properties["provider-list"].properties.volumes.properties.size.properties.unit.enum, parentSchema: schema243.properties["provider-list"].properties.volumes.properties.size.properties.unit, data: data32 };
                    vErrors === null ? vErrors = [err79] : vErrors.push(err79), errors++;
                  }
                }
              } else {
                let err80 = { instancePath: instancePath + "/provider-list/volumes/size", schemaPath: "#/properties/provider-list/properties/volumes/properties/size/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties["provider-list"].properties.volumes.properties.size.type, parentSchema: schema243.properties["provider-list"].properties.volumes.properties.size, data: data30 };
                vErrors === null ? vErrors = [err80] : vErrors.push(err80), errors++;
              }
            }
            if (data26.tier !== void 0) {
              let data33 = data26.tier;
              if (typeof data33 == "string") {
                if (func10(data33) > 200) {
                  let err81 = { instancePath: instancePath + "/provider-list/volumes/tier", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data33 };
                  vErrors === null ? vErrors = [err81] : vErrors.push(err81), errors++;
                }
                if (func10(data33) < 1) {
                  let err82 = { instancePath: instancePath + "/provider-list/volumes/tier", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data33 };
                  vErrors === null ? vErrors = [err82] : vErrors.push(err82), errors++;
                }
              } else {
                let err83 = { instancePath: instancePath + "/provider-list/volumes/tier", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data33 };
                vErrors === null ? vErrors = [err83] : vErrors.push(err83), errors++;
              }
            }
            if (data26.site !== void 0) {
              let data34 = data26.site;
              if (typeof data34 == "string") {
                if (func10(data34) > 200) {
                  let err84 = { instancePath: instancePath + "/provider-list/volumes/site", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data34 };
                  vErrors === null ? vErrors = [err84] : vErrors.push(err84), errors++;
                }
                if (func10(data34) < 1) {
                  let err85 = { instancePath: instancePath + "/provider-list/volumes/site", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data34 };
                  vErrors === null ? vErrors = [err85] : vErrors.push(err85), errors++;
                }
              } else {
                let err86 = { instancePath: instancePath + "/provider-list/volumes/site", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data34 };
                vErrors === null ? vErrors = [err86] : vErrors.push(err86), errors++;
              }
            }
            if (data26.server !== void 0) {
              let data35 = data26.server;
              if (typeof data35 == "string") {
                if (func10(data35) > 200) {
                  let err87 = { instancePath: instancePath + "/provider-list/volumes/server", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data35 };
                  vErrors === null ? vErrors = [err87] : vErrors.push(err87), errors++;
                }
                if (func10(data35) < 1) {
                  let err88 = { instancePath: instancePath + "/provider-list/volumes/server", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data35 };
                  vErrors === null ? vErrors = [err88] : vErrors.push(err88), errors++;
                }
              } else {
                let err89 = { instancePath: instancePath + "/provider-list/volumes/server", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data35 };
                vErrors === null ? vErrors = [err89] : vErrors.push(err89), errors++;
              }
            }
            if (data26.boot !== void 0) {
              let data36 = data26.boot;
              if (typeof data36 == "string") {
                if (func10(data36) > 200) {
                  let err90 = { instancePath: instancePath + "/provider-list/volumes/boot", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data36 };
                  vErrors === null ? vErrors = [err90] : vErrors.push(err90), errors++;
                }
                if (func10(data36) < 1) {
                  let err91 = { instancePath: instancePath + "/provider-list/volumes/boot", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data36 };
                  vErrors === null ? vErrors = [err91] : vErrors.push(err91), errors++;
                }
              } else {
                let err92 = { instancePath: instancePath + "/provider-list/volumes/boot", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data36 };
                vErrors === null ? vErrors = [err92] : vErrors.push(err92), errors++;
              }
            }
          } else {
            let err93 = { instancePath: instancePath + "/provider-list/volumes", schemaPath: "#/properties/provider-list/properties/volumes/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties["provider-list"].properties.volumes.type, parentSchema: schema243.properties["provider-list"].properties.volumes, data: data26 };
            vErrors === null ? vErrors = [err93] : vErrors.push(err93), errors++;
          }
        }
        if (data25.servers !== void 0) {
          let data37 = data25.servers;
          if (data37 && typeof data37 == "object" && !Array.isArray(data37)) {
            for (let key12 in data37)
              if (!(key12 === "rows" || key12 === "id" || key12 === "name" || key12 === "site" || key12 === "type" || key12 === "power" || key12 === "boot")) {
                let err94 = { instancePath: instancePath + "/provider-list/servers", schemaPath: "#/properties/provider-list/properties/servers/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key12 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema243.properties["provider-list"].properties.servers, data: data37 };
                vErrors === null ? vErrors = [err94] : vErrors.push(err94), errors++;
              }
            if (data37.rows !== void 0) {
              let data38 = data37.rows;
              if (typeof data38 == "string") {
                if (func10(data38) > 200) {
                  let err95 = { instancePath: instancePath + "/provider-list/servers/rows", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data38 };
                  vErrors === null ? vErrors = [err95] : vErrors.push(err95), errors++;
                }
                if (func10(data38) < 1) {
                  let err96 = { instancePath: instancePath + "/provider-list/servers/rows", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data38 };
                  vErrors === null ? vErrors = [err96] : vErrors.push(err96), errors++;
                }
              } else {
                let err97 = { instancePath: instancePath + "/provider-list/servers/rows", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data38 };
                vErrors === null ? vErrors = [err97] : vErrors.push(err97), errors++;
              }
            }
            if (data37.id !== void 0) {
              let data39 = data37.id;
              if (typeof data39 == "string") {
                if (func10(data39) > 200) {
                  let err98 = { instancePath: instancePath + "/provider-list/servers/id", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data39 };
                  vErrors === null ? vErrors = [err98] : vErrors.push(err98), errors++;
                }
                if (func10(data39) < 1) {
                  let err99 = { instancePath: instancePath + "/provider-list/servers/id", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data39 };
                  vErrors === null ? vErrors = [err99] : vErrors.push(err99), errors++;
                }
              } else {
                let err100 = { instancePath: instancePath + "/provider-list/servers/id", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data39 };
                vErrors === null ? vErrors = [err100] : vErrors.push(err100), errors++;
              }
            }
            if (data37.name !== void 0) {
              let data40 = data37.name;
              if (typeof data40 == "string") {
                if (func10(data40) > 200) {
                  let err101 = { instancePath: instancePath + "/provider-list/servers/name", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data40 };
                  vErrors === null ? vErrors = [err101] : vErrors.push(err101), errors++;
                }
                if (func10(data40) < 1) {
                  let err102 = { instancePath: instancePath + "/provider-list/servers/name", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data40 };
                  vErrors === null ? vErrors = [err102] : vErrors.push(err102), errors++;
                }
              } else {
                let err103 = { instancePath: instancePath + "/provider-list/servers/name", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data40 };
                vErrors === null ? vErrors = [err103] : vErrors.push(err103), errors++;
              }
            }
            if (data37.site !== void 0) {
              let data41 = data37.site;
              if (typeof data41 == "string") {
                if (func10(data41) > 200) {
                  let err104 = { instancePath: instancePath + "/provider-list/servers/site", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data41 };
                  vErrors === null ? vErrors = [err104] : vErrors.push(err104), errors++;
                }
                if (func10(data41) < 1) {
                  let err105 = { instancePath: instancePath + "/provider-list/servers/site", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data41 };
                  vErrors === null ? vErrors = [err105] : vErrors.push(err105), errors++;
                }
              } else {
                let err106 = { instancePath: instancePath + "/provider-list/servers/site", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data41 };
                vErrors === null ? vErrors = [err106] : vErrors.push(err106), errors++;
              }
            }
            if (data37.type !== void 0) {
              let data42 = data37.type;
              if (typeof data42 == "string") {
                if (func10(data42) > 200) {
                  let err107 = { instancePath: instancePath + "/provider-list/servers/type", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data42 };
                  vErrors === null ? vErrors = [err107] : vErrors.push(err107), errors++;
                }
                if (func10(data42) < 1) {
                  let err108 = { instancePath: instancePath + "/provider-list/servers/type", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data42 };
                  vErrors === null ? vErrors = [err108] : vErrors.push(err108), errors++;
                }
              } else {
                let err109 = { instancePath: instancePath + "/provider-list/servers/type", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data42 };
                vErrors === null ? vErrors = [err109] : vErrors.push(err109), errors++;
              }
            }
            if (data37.power !== void 0) {
              let data43 = data37.power;
              if (typeof data43 == "string") {
                if (func10(data43) > 200) {
                  let err110 = { instancePath: instancePath + "/provider-list/servers/power", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data43 };
                  vErrors === null ? vErrors = [err110] : vErrors.push(err110), errors++;
                }
                if (func10(data43) < 1) {
                  let err111 = { instancePath: instancePath + "/provider-list/servers/power", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data43 };
                  vErrors === null ? vErrors = [err111] : vErrors.push(err111), errors++;
                }
              } else {
                let err112 = { instancePath: instancePath + "/provider-list/servers/power", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data43 };
                vErrors === null ? vErrors = [err112] : vErrors.push(err112), errors++;
              }
            }
            if (data37.boot !== void 0) {
              let data44 = data37.boot;
              if (typeof data44 == "string") {
                if (func10(data44) > 200) {
                  let err113 = { instancePath: instancePath + "/provider-list/servers/boot", schemaPath: "#/$defs/field/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters", schema: 200, parentSchema: schema260, data: data44 };
                  vErrors === null ? vErrors = [err113] : vErrors.push(err113), errors++;
                }
                if (func10(data44) < 1) {
                  let err114 = { instancePath: instancePath + "/provider-list/servers/boot", schemaPath: "#/$defs/field/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema260, data: data44 };
                  vErrors === null ? vErrors = [err114] : vErrors.push(err114), errors++;
                }
              } else {
                let err115 = { instancePath: instancePath + "/provider-list/servers/boot", schemaPath: "#/$defs/field/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema260.type, parentSchema: schema260, data: data44 };
                vErrors === null ? vErrors = [err115] : vErrors.push(err115), errors++;
              }
            }
          } else {
            let err116 = { instancePath: instancePath + "/provider-list/servers", schemaPath: "#/properties/provider-list/properties/servers/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties["provider-list"].properties.servers.type, parentSchema: schema243.properties["provider-list"].properties.servers, data: data37 };
            vErrors === null ? vErrors = [err116] : vErrors.push(err116), errors++;
          }
        }
        if (data25.tiers !== void 0) {
          let data45 = data25.tiers;
          if (data45 && typeof data45 == "object" && !Array.isArray(data45))
            for (let key13 in data45) {
              let data46 = data45[key13];
              if (typeof data46 == "string") {
                if (!pattern13.test(data46)) {
                  let err117 = { instancePath: instancePath + "/provider-list/tiers/" + key13.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data46 };
                  vErrors === null ? vErrors = [err117] : vErrors.push(err117), errors++;
                }
              } else {
                let err118 = { instancePath: instancePath + "/provider-list/tiers/" + key13.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data46 };
                vErrors === null ? vErrors = [err118] : vErrors.push(err118), errors++;
              }
            }
          else {
            let err119 = { instancePath: instancePath + "/provider-list/tiers", schemaPath: "#/properties/provider-list/properties/tiers/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties["provider-list"].properties.tiers.type, parentSchema: schema243.properties["provider-list"].properties.tiers, data: data45 };
            vErrors === null ? vErrors = [err119] : vErrors.push(err119), errors++;
          }
        }
        if (data25.sites !== void 0) {
          let data47 = data25.sites;
          if (data47 && typeof data47 == "object" && !Array.isArray(data47))
            for (let key14 in data47) {
              let data48 = data47[key14];
              if (typeof data48 == "string") {
                if (!pattern13.test(data48)) {
                  let err120 = { instancePath: instancePath + "/provider-list/sites/" + key14.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data48 };
                  vErrors === null ? vErrors = [err120] : vErrors.push(err120), errors++;
                }
              } else {
                let err121 = { instancePath: instancePath + "/provider-list/sites/" + key14.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data48 };
                vErrors === null ? vErrors = [err121] : vErrors.push(err121), errors++;
              }
            }
          else {
            let err122 = { instancePath: instancePath + "/provider-list/sites", schemaPath: "#/properties/provider-list/properties/sites/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties["provider-list"].properties.sites.type, parentSchema: schema243.properties["provider-list"].properties.sites, data: data47 };
            vErrors === null ? vErrors = [err122] : vErrors.push(err122), errors++;
          }
        }
        if (data25.types !== void 0) {
          let data49 = data25.types;
          if (data49 && typeof data49 == "object" && !Array.isArray(data49))
            for (let key15 in data49) {
              let data50 = data49[key15];
              if (typeof data50 == "string") {
                if (!pattern13.test(data50)) {
                  let err123 = { instancePath: instancePath + "/provider-list/types/" + key15.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data50 };
                  vErrors === null ? vErrors = [err123] : vErrors.push(err123), errors++;
                }
              } else {
                let err124 = { instancePath: instancePath + "/provider-list/types/" + key15.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data50 };
                vErrors === null ? vErrors = [err124] : vErrors.push(err124), errors++;
              }
            }
          else {
            let err125 = { instancePath: instancePath + "/provider-list/types", schemaPath: "#/properties/provider-list/properties/types/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties["provider-list"].properties.types.type, parentSchema: schema243.properties["provider-list"].properties.types, data: data49 };
            vErrors === null ? vErrors = [err125] : vErrors.push(err125), errors++;
          }
        }
        if (data25.power !== void 0) {
          let data51 = data25.power;
          if (data51 && typeof data51 == "object" && !Array.isArray(data51))
            for (let key16 in data51) {
              let data52 = data51[key16];
              if (!(data52 === "running" || data52 === "stopped")) {
                let err126 = { instancePath: instancePath + "/provider-list/power/" + key16.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/provider-list/properties/power/additionalProperties/enum", keyword: "enum", params: { allowedValues: schema243.properties["provider-list"].properties.power.additionalProperties.enum }, message: "must be equal to one of the allowed values", schema: schema243.properties["provider-list"].properties.power.additionalProperties.enum, parentSchema: schema243.properties["provider-list"].properties.power.additionalProperties, data: data52 };
                vErrors === null ? vErrors = [err126] : vErrors.push(err126), errors++;
              }
            }
          else {
            let err127 = { instancePath: instancePath + "/provider-list/power", schemaPath: "#/properties/provider-list/properties/power/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties["provider-list"].properties.power.type, parentSchema: schema243.properties["provider-list"].properties.power, data: data51 };
            vErrors === null ? vErrors = [err127] : vErrors.push(err127), errors++;
          }
        }
      } else {
        let err128 = { instancePath: instancePath + "/provider-list", schemaPath: "#/properties/provider-list/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.properties["provider-list"].type, parentSchema: schema243.properties["provider-list"], data: data25 };
        vErrors === null ? vErrors = [err128] : vErrors.push(err128), errors++;
      }
    }
  } else {
    let err129 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema243.type, parentSchema: schema243, data };
    vErrors === null ? vErrors = [err129] : vErrors.push(err129), errors++;
  }
  return validate195.errors = vErrors, errors === 0;
}
validate195.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var survey = validate67, schema125 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "survey.json", title: "SurveyFile", description: "What a server's own tools show to be there, at one time: what `ullage survey add` keeps of it in surveys/SERVER.json.", type: "object", additionalProperties: !1, required: ["format", "server", "at", "tools", "unseen", "devices", "volume-groups", "file-systems"], properties: { format: { type: "string", enum: ["ullage-survey-1"], description: "The version of this format." }, server: { $ref: "common.json#/$defs/name", description: "The server, as the estate names it." }, at: { $ref: "#/$defs/time", description: "When it was taken." }, tools: { title: "SurveyTools", type: "object", propertyNames: { pattern: "^[a-z0-9][a-z0-9._-]{0,31}$" }, additionalProperties: { type: "string", maxLength: 64, pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, description: "The tools that were asked, each with its version, where it says one." }, unseen: { type: "array", items: { type: "string", enum: ["devices", "mounts", "use", "volume-groups", "fstab", "superblocks"] }, uniqueItems: !0, description: "What could not be seen, for want of a tool or of a privilege. Of these nothing is said to be missing." }, devices: { type: "array", description: "The disks, and the partitions and other block devices on them, by name.", items: { $ref: "#/$defs/device" } }, "volume-groups": { type: "array", description: "The volume groups, by name.", items: { $ref: "#/$defs/volumeGroup" } }, "file-systems": { type: "array", description: "The file systems and swap areas, by device.", items: { $ref: "#/$defs/fileSystem" } } }, $defs: { time: { title: "SurveyTime", type: "string", pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$", description: "RFC 3339, in UTC, with whole seconds." }, bytes: { title: "ByteCount", type: "string", pattern: "^(0|[1-9][0-9]{0,18})$", description: "A whole number of bytes." }, text: { title: "SurveyText", type: "string", minLength: 1, maxLength: 255, pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", description: "A name as the server has it, without control characters." }, device: { title: "SurveyedDevice", type: "object", additionalProperties: !1, required: ["name", "type", "size"], description: "One block device.", properties: { name: { $ref: "#/$defs/text", description: "Its name under /dev, such as vdb, vda1 or mapper/plates-scans." }, type: { $ref: "#/$defs/text", description: "As lsblk says it: disk, part, lvm, crypt, raid1 and the like." }, on: { type: "array", items: { $ref: "#/$defs/text" }, minItems: 1, description: "The devices it lies on, by name; none for a disk." }, size: { $ref: "#/$defs/bytes", description: "Its size." }, serial: { $ref: "#/$defs/text", description: "A disk's serial number, as the guest sees it." }, content: { $ref: "#/$defs/text", description: "What lies on it, as the system recognises it: ext4, xfs, swap, LVM2_member and the like." } } }, volumeGroup: { title: "SurveyedVolumeGroup", type: "object", additionalProperties: !1, required: ["name", "extent", "extents", "free", "missing", "members", "logical-volumes"], description: "One volume group.", properties: { name: { $ref: "#/$defs/text", description: "Its name." }, extent: { $ref: "#/$defs/bytes", description: "The size of an extent." }, extents: { type: "integer", minimum: 0, description: "How many extents it has." }, free: { type: "integer", minimum: 0, description: "How many of them belong to no logical volume." }, missing: { type: "integer", minimum: 0, description: "How many of its physical volumes are missing." }, members: { type: "array", description: "Its physical volumes, by device.", items: { title: "SurveyedMember", type: "object", additionalProperties: !1, required: ["extents", "free"], description: "One physical volume.", properties: { device: { $ref: "#/$defs/text", description: "The device, by name; left out where it is missing." }, size: { $ref: "#/$defs/bytes", description: "The physical volume's size, as the group has taken it up." }, "device-size": { $ref: "#/$defs/bytes", description: "The size of the device beneath it." }, "first-extent": { $ref: "#/$defs/bytes", description: "Where on the device its first extent begins." }, extents: { type: "integer", minimum: 0, description: "How many extents it gives the group." }, free: { type: "integer", minimum: 0, description: "How many of them are free." } } } }, "logical-volumes": { type: "array", description: "Its logical volumes, by name.", items: { title: "SurveyedLogicalVolume", type: "object", additionalProperties: !1, required: ["name", "size", "layout"], description: "One logical volume.", properties: { name: { $ref: "#/$defs/text", description: "Its name in the group." }, size: { $ref: "#/$defs/bytes", description: "Its size." }, layout: { type: "string", enum: ["linear", "striped", "mirrored", "other"], description: "How its extents lie." }, stripes: { type: "integer", minimum: 1, description: "Of a striped one: on how many members." }, copies: { type: "integer", minimum: 1, description: "Of a mirrored one: how many images." }, active: { type: "boolean", description: "Whether it is active." } } } } } }, fileSystem: { title: "SurveyedFileSystem", type: "object", additionalProperties: !1, required: ["device", "type"], description: "One file system or swap area.", properties: { device: { $ref: "#/$defs/text", description: "The device it lies on, by name; of a logical volume, group/logical volume." }, type: { $ref: "#/$defs/text", description: "Its type: ext4, xfs, swap and the like." }, id: { $ref: "#/$defs/text", description: "Its own identifier (UUID), by which the same one is known on another server." }, mounts: { type: "array", items: { type: "string", pattern: "^(/[^\\u0000-\\u001f\\u007f-\\u009f]*|swap)$", maxLength: 4096 }, description: "Where it is mounted now; the first is the one it is known by." }, "in-fstab": { type: "string", pattern: "^(/[^\\u0000-\\u001f\\u007f-\\u009f]*|swap)$", maxLength: 4096, description: "Where fstab mounts it." }, size: { $ref: "#/$defs/bytes", description: "Its own size by its superblock: blocks times block size." }, "block-size": { $ref: "#/$defs/bytes", description: "Its block size." }, metadata: { $ref: "#/$defs/bytes", description: "What it keeps for itself of that." }, reserved: { $ref: "#/$defs/bytes", description: "What only the superuser may fill." }, usable: { $ref: "#/$defs/bytes", description: "What df gives as its size." }, used: { $ref: "#/$defs/bytes", description: "What df gives as used." }, available: { type: "string", pattern: "^(0|-?[1-9][0-9]{0,18})$", description: "What df gives as available." } } } } }, pattern57 = new RegExp("^[a-z0-9][a-z0-9._-]{0,31}$", "u"), schema128 = { title: "SurveyedDevice", type: "object", additionalProperties: !1, required: ["name", "type", "size"], description: "One block device.", properties: { name: { $ref: "#/$defs/text", description: "Its name under /dev, such as vdb, vda1 or mapper/plates-scans." }, type: { $ref: "#/$defs/text", description: "As lsblk says it: disk, part, lvm, crypt, raid1 and the like." }, on: { type: "array", items: { $ref: "#/$defs/text" }, minItems: 1, description: "The devices it lies on, by name; none for a disk." }, size: { $ref: "#/$defs/bytes", description: "Its size." }, serial: { $ref: "#/$defs/text", description: "A disk's serial number, as the guest sees it." }, content: { $ref: "#/$defs/text", description: "What lies on it, as the system recognises it: ext4, xfs, swap, LVM2_member and the like." } } };
function validate68(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate68.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema128.required, parentSchema: schema128, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.type === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "type" }, message: "must have required property 'type'", schema: schema128.required, parentSchema: schema128, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.size === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "size" }, message: "must have required property 'size'", schema: schema128.required, parentSchema: schema128, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "name" || key0 === "type" || key0 === "on" || key0 === "size" || key0 === "serial" || key0 === "content")) {
        let err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema128, data };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    if (data.name !== void 0) {
      let data0 = data.name;
      if (typeof data0 == "string") {
        if (func10(data0) > 255) {
          let err4 = { instancePath: instancePath + "/name", schemaPath: "#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data0 };
          vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
        }
        if (func10(data0) < 1) {
          let err5 = { instancePath: instancePath + "/name", schemaPath: "#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data0 };
          vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
        }
        if (!pattern58.test(data0)) {
          let err6 = { instancePath: instancePath + "/name", schemaPath: "#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data0 };
          vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
        }
      } else {
        let err7 = { instancePath: instancePath + "/name", schemaPath: "#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data0 };
        vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
      }
    }
    if (data.type !== void 0) {
      let data1 = data.type;
      if (typeof data1 == "string") {
        if (func10(data1) > 255) {
          let err8 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data1 };
          vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
        }
        if (func10(data1) < 1) {
          let err9 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data1 };
          vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
        }
        if (!pattern58.test(data1)) {
          let err10 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data1 };
          vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
        }
      } else {
        let err11 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data1 };
        vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
      }
    }
    if (data.on !== void 0) {
      let data2 = data.on;
      if (Array.isArray(data2)) {
        if (data2.length < 1) {
          let err12 = { instancePath: instancePath + "/on", schemaPath: "#/properties/on/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema128.properties.on, data: data2 };
          vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
        }
        let len0 = data2.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data3 = data2[i0];
          if (typeof data3 == "string") {
            if (func10(data3) > 255) {
              let err13 = { instancePath: instancePath + "/on/" + i0, schemaPath: "#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data3 };
              vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
            }
            if (func10(data3) < 1) {
              let err14 = { instancePath: instancePath + "/on/" + i0, schemaPath: "#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data3 };
              vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
            }
            if (!pattern58.test(data3)) {
              let err15 = { instancePath: instancePath + "/on/" + i0, schemaPath: "#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data3 };
              vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
            }
          } else {
            let err16 = { instancePath: instancePath + "/on/" + i0, schemaPath: "#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data3 };
            vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
          }
        }
      } else {
        let err17 = { instancePath: instancePath + "/on", schemaPath: "#/properties/on/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema128.properties.on.type, parentSchema: schema128.properties.on, data: data2 };
        vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
      }
    }
    if (data.size !== void 0) {
      let data4 = data.size;
      if (typeof data4 == "string") {
        if (!pattern62.test(data4)) {
          let err18 = { instancePath: instancePath + "/size", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data4 };
          vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
        }
      } else {
        let err19 = { instancePath: instancePath + "/size", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data4 };
        vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
      }
    }
    if (data.serial !== void 0) {
      let data5 = data.serial;
      if (typeof data5 == "string") {
        if (func10(data5) > 255) {
          let err20 = { instancePath: instancePath + "/serial", schemaPath: "#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data5 };
          vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
        }
        if (func10(data5) < 1) {
          let err21 = { instancePath: instancePath + "/serial", schemaPath: "#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data5 };
          vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
        }
        if (!pattern58.test(data5)) {
          let err22 = { instancePath: instancePath + "/serial", schemaPath: "#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data5 };
          vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
        }
      } else {
        let err23 = { instancePath: instancePath + "/serial", schemaPath: "#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data5 };
        vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
      }
    }
    if (data.content !== void 0) {
      let data6 = data.content;
      if (typeof data6 == "string") {
        if (func10(data6) > 255) {
          let err24 = { instancePath: instancePath + "/content", schemaPath: "#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data6 };
          vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
        }
        if (func10(data6) < 1) {
          let err25 = { instancePath: instancePath + "/content", schemaPath: "#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data6 };
          vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
        }
        if (!pattern58.test(data6)) {
          let err26 = { instancePath: instancePath + "/content", schemaPath: "#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data6 };
          vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
        }
      } else {
        let err27 = { instancePath: instancePath + "/content", schemaPath: "#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data6 };
        vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
      }
    }
  } else {
    let err28 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema128.type, parentSchema: schema128, data };
    vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
  }
  return validate68.errors = vErrors, errors === 0;
}
validate68.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema135 = { title: "SurveyedVolumeGroup", type: "object", additionalProperties: !1, required: ["name", "extent", "extents", "free", "missing", "members", "logical-volumes"], description: "One volume group.", properties: { name: { $ref: "#/$defs/text", description: "Its name." }, extent: { $ref: "#/$defs/bytes", description: "The size of an extent." }, extents: { type: "integer", minimum: 0, description: "How many extents it has." }, free: { type: "integer", minimum: 0, description: "How many of them belong to no logical volume." }, missing: { type: "integer", minimum: 0, description: "How many of its physical volumes are missing." }, members: { type: "array", description: "Its physical volumes, by device.", items: { title: "SurveyedMember", type: "object", additionalProperties: !1, required: ["extents", "free"], description: "One physical volume.", properties: { device: { $ref: "#/$defs/text", description: "The device, by name; left out where it is missing." }, size: { $ref: "#/$defs/bytes", description: "The physical volume's size, as the group has taken it up." }, "device-size": { $ref: "#/$defs/bytes", description: "The size of the device beneath it." }, "first-extent": { $ref: "#/$defs/bytes", description: "Where on the device its first extent begins." }, extents: { type: "integer", minimum: 0, description: "How many extents it gives the group." }, free: { type: "integer", minimum: 0, description: "How many of them are free." } } } }, "logical-volumes": { type: "array", description: "Its logical volumes, by name.", items: { title: "SurveyedLogicalVolume", type: "object", additionalProperties: !1, required: ["name", "size", "layout"], description: "One logical volume.", properties: { name: { $ref: "#/$defs/text", description: "Its name in the group." }, size: { $ref: "#/$defs/bytes", description: "Its size." }, layout: { type: "string", enum: ["linear", "striped", "mirrored", "other"], description: "How its extents lie." }, stripes: { type: "integer", minimum: 1, description: "Of a striped one: on how many members." }, copies: { type: "integer", minimum: 1, description: "Of a mirrored one: how many images." }, active: { type: "boolean", description: "Whether it is active." } } } } } };
function validate70(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate70.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema135.required, parentSchema: schema135, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.extent === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "extent" }, message: "must have required property 'extent'", schema: schema135.required, parentSchema: schema135, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.extents === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "extents" }, message: "must have required property 'extents'", schema: schema135.required, parentSchema: schema135, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.free === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "free" }, message: "must have required property 'free'", schema: schema135.required, parentSchema: schema135, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    if (data.missing === void 0) {
      let err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "missing" }, message: "must have required property 'missing'", schema: schema135.required, parentSchema: schema135, data };
      vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
    }
    if (data.members === void 0) {
      let err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "members" }, message: "must have required property 'members'", schema: schema135.required, parentSchema: schema135, data };
      vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
    }
    if (data["logical-volumes"] === void 0) {
      let err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "logical-volumes" }, message: "must have required property 'logical-volumes'", schema: schema135.required, parentSchema: schema135, data };
      vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "name" || key0 === "extent" || key0 === "extents" || key0 === "free" || key0 === "missing" || key0 === "members" || key0 === "logical-volumes")) {
        let err7 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema135, data };
        vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
      }
    if (data.name !== void 0) {
      let data0 = data.name;
      if (typeof data0 == "string") {
        if (func10(data0) > 255) {
          let err8 = { instancePath: instancePath + "/name", schemaPath: "#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data0 };
          vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
        }
        if (func10(data0) < 1) {
          let err9 = { instancePath: instancePath + "/name", schemaPath: "#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data0 };
          vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
        }
        if (!pattern58.test(data0)) {
          let err10 = { instancePath: instancePath + "/name", schemaPath: "#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data0 };
          vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
        }
      } else {
        let err11 = { instancePath: instancePath + "/name", schemaPath: "#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data0 };
        vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
      }
    }
    if (data.extent !== void 0) {
      let data1 = data.extent;
      if (typeof data1 == "string") {
        if (!pattern62.test(data1)) {
          let err12 = { instancePath: instancePath + "/extent", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data1 };
          vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
        }
      } else {
        let err13 = { instancePath: instancePath + "/extent", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data1 };
        vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
      }
    }
    if (data.extents !== void 0) {
      let data2 = data.extents;
      if (!(typeof data2 == "number" && !(data2 % 1) && !isNaN(data2) && isFinite(data2))) {
        let err14 = { instancePath: instancePath + "/extents", schemaPath: "#/properties/extents/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema135.properties.extents.type, parentSchema: schema135.properties.extents, data: data2 };
        vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
      }
      if (typeof data2 == "number" && isFinite(data2) && (data2 < 0 || isNaN(data2))) {
        let err15 = { instancePath: instancePath + "/extents", schemaPath: "#/properties/extents/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema135.properties.extents, data: data2 };
        vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
      }
    }
    if (data.free !== void 0) {
      let data3 = data.free;
      if (!(typeof data3 == "number" && !(data3 % 1) && !isNaN(data3) && isFinite(data3))) {
        let err16 = { instancePath: instancePath + "/free", schemaPath: "#/properties/free/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema135.properties.free.type, parentSchema: schema135.properties.free, data: data3 };
        vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
      }
      if (typeof data3 == "number" && isFinite(data3) && (data3 < 0 || isNaN(data3))) {
        let err17 = { instancePath: instancePath + "/free", schemaPath: "#/properties/free/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema135.properties.free, data: data3 };
        vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
      }
    }
    if (data.missing !== void 0) {
      let data4 = data.missing;
      if (!(typeof data4 == "number" && !(data4 % 1) && !isNaN(data4) && isFinite(data4))) {
        let err18 = { instancePath: instancePath + "/missing", schemaPath: "#/properties/missing/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema135.properties.missing.type, parentSchema: schema135.properties.missing, data: data4 };
        vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
      }
      if (typeof data4 == "number" && isFinite(data4) && (data4 < 0 || isNaN(data4))) {
        let err19 = { instancePath: instancePath + "/missing", schemaPath: "#/properties/missing/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema135.properties.missing, data: data4 };
        vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
      }
    }
    if (data.members !== void 0) {
      let data5 = data.members;
      if (Array.isArray(data5)) {
        let len0 = data5.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data6 = data5[i0];
          if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
            if (data6.extents === void 0) {
              let err20 = { instancePath: instancePath + "/members/" + i0, schemaPath: "#/properties/members/items/required", keyword: "required", params: { missingProperty: "extents" }, message: "must have required property 'extents'", schema: schema135.properties.members.items.required, parentSchema: schema135.properties.members.items, data: data6 };
              vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
            }
            if (data6.free === void 0) {
              let err21 = { instancePath: instancePath + "/members/" + i0, schemaPath: "#/properties/members/items/required", keyword: "required", params: { missingProperty: "free" }, message: "must have required property 'free'", schema: schema135.properties.members.items.required, parentSchema: schema135.properties.members.items, data: data6 };
              vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
            }
            for (let key1 in data6)
              if (!(key1 === "device" || key1 === "size" || key1 === "device-size" || key1 === "first-extent" || key1 === "extents" || key1 === "free")) {
                let err22 = { instancePath: instancePath + "/members/" + i0, schemaPath: "#/properties/members/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema135.properties.members.items, data: data6 };
                vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
              }
            if (data6.device !== void 0) {
              let data7 = data6.device;
              if (typeof data7 == "string") {
                if (func10(data7) > 255) {
                  let err23 = { instancePath: instancePath + "/members/" + i0 + "/device", schemaPath: "#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data7 };
                  vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
                }
                if (func10(data7) < 1) {
                  let err24 = { instancePath: instancePath + "/members/" + i0 + "/device", schemaPath: "#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data7 };
                  vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
                }
                if (!pattern58.test(data7)) {
                  let err25 = { instancePath: instancePath + "/members/" + i0 + "/device", schemaPath: "#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data7 };
                  vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
                }
              } else {
                let err26 = { instancePath: instancePath + "/members/" + i0 + "/device", schemaPath: "#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data7 };
                vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
              }
            }
            if (data6.size !== void 0) {
              let data8 = data6.size;
              if (typeof data8 == "string") {
                if (!pattern62.test(data8)) {
                  let err27 = { instancePath: instancePath + "/members/" + i0 + "/size", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data8 };
                  vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
                }
              } else {
                let err28 = { instancePath: instancePath + "/members/" + i0 + "/size", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data8 };
                vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
              }
            }
            if (data6["device-size"] !== void 0) {
              let data9 = data6["device-size"];
              if (typeof data9 == "string") {
                if (!pattern62.test(data9)) {
                  let err29 = { instancePath: instancePath + "/members/" + i0 + "/device-size", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data9 };
                  vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
                }
              } else {
                let err30 = { instancePath: instancePath + "/members/" + i0 + "/device-size", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data9 };
                vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
              }
            }
            if (data6["first-extent"] !== void 0) {
              let data10 = data6["first-extent"];
              if (typeof data10 == "string") {
                if (!pattern62.test(data10)) {
                  let err31 = { instancePath: instancePath + "/members/" + i0 + "/first-extent", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data10 };
                  vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
                }
              } else {
                let err32 = { instancePath: instancePath + "/members/" + i0 + "/first-extent", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data10 };
                vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
              }
            }
            if (data6.extents !== void 0) {
              let data11 = data6.extents;
              if (!(typeof data11 == "number" && !(data11 % 1) && !isNaN(data11) && isFinite(data11))) {
                let err33 = { instancePath: instancePath + "/members/" + i0 + "/extents", schemaPath: "#/properties/members/items/properties/extents/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema135.properties.members.items.properties.extents.type, parentSchema: schema135.properties.members.items.properties.extents, data: data11 };
                vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
              }
              if (typeof data11 == "number" && isFinite(data11) && (data11 < 0 || isNaN(data11))) {
                let err34 = { instancePath: instancePath + "/members/" + i0 + "/extents", schemaPath: "#/properties/members/items/properties/extents/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema135.properties.members.items.properties.extents, data: data11 };
                vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
              }
            }
            if (data6.free !== void 0) {
              let data12 = data6.free;
              if (!(typeof data12 == "number" && !(data12 % 1) && !isNaN(data12) && isFinite(data12))) {
                let err35 = { instancePath: instancePath + "/members/" + i0 + "/free", schemaPath: "#/properties/members/items/properties/free/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema135.properties.members.items.properties.free.type, parentSchema: schema135.properties.members.items.properties.free, data: data12 };
                vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
              }
              if (typeof data12 == "number" && isFinite(data12) && (data12 < 0 || isNaN(data12))) {
                let err36 = { instancePath: instancePath + "/members/" + i0 + "/free", schemaPath: "#/properties/members/items/properties/free/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema135.properties.members.items.properties.free, data: data12 };
                vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
              }
            }
          } else {
            let err37 = { instancePath: instancePath + "/members/" + i0, schemaPath: "#/properties/members/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema135.properties.members.items.type, parentSchema: schema135.properties.members.items, data: data6 };
            vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
          }
        }
      } else {
        let err38 = { instancePath: instancePath + "/members", schemaPath: "#/properties/members/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema135.properties.members.type, parentSchema: schema135.properties.members, data: data5 };
        vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
      }
    }
    if (data["logical-volumes"] !== void 0) {
      let data13 = data["logical-volumes"];
      if (Array.isArray(data13)) {
        let len1 = data13.length;
        for (let i1 = 0; i1 < len1; i1++) {
          let data14 = data13[i1];
          if (data14 && typeof data14 == "object" && !Array.isArray(data14)) {
            if (data14.name === void 0) {
              let err39 = { instancePath: instancePath + "/logical-volumes/" + i1, schemaPath: "#/properties/logical-volumes/items/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'", schema: schema135.properties["logical-volumes"].items.required, parentSchema: schema135.properties["logical-volumes"].items, data: data14 };
              vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
            }
            if (data14.size === void 0) {
              let err40 = { instancePath: instancePath + "/logical-volumes/" + i1, schemaPath: "#/properties/logical-volumes/items/required", keyword: "required", params: { missingProperty: "size" }, message: "must have required property 'size'", schema: schema135.properties["logical-volumes"].items.required, parentSchema: schema135.properties["logical-volumes"].items, data: data14 };
              vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
            }
            if (data14.layout === void 0) {
              let err41 = { instancePath: instancePath + "/logical-volumes/" + i1, schemaPath: "#/properties/logical-volumes/items/required", keyword: "required", params: { missingProperty: "layout" }, message: "must have required property 'layout'", schema: schema135.properties["logical-volumes"].items.required, parentSchema: schema135.properties["logical-volumes"].items, data: data14 };
              vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
            }
            for (let key2 in data14)
              if (!(key2 === "name" || key2 === "size" || key2 === "layout" || key2 === "stripes" || key2 === "copies" || key2 === "active")) {
                let err42 = { instancePath: instancePath + "/logical-volumes/" + i1, schemaPath: "#/properties/logical-volumes/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema135.properties["logical-volumes"].items, data: data14 };
                vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
              }
            if (data14.name !== void 0) {
              let data15 = data14.name;
              if (typeof data15 == "string") {
                if (func10(data15) > 255) {
                  let err43 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/name", schemaPath: "#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data15 };
                  vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
                }
                if (func10(data15) < 1) {
                  let err44 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/name", schemaPath: "#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data15 };
                  vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
                }
                if (!pattern58.test(data15)) {
                  let err45 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/name", schemaPath: "#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data15 };
                  vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
                }
              } else {
                let err46 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/name", schemaPath: "#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data15 };
                vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
              }
            }
            if (data14.size !== void 0) {
              let data16 = data14.size;
              if (typeof data16 == "string") {
                if (!pattern62.test(data16)) {
                  let err47 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/size", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data16 };
                  vErrors === null ? vErrors = [err47] : vErrors.push(err47), errors++;
                }
              } else {
                let err48 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/size", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data16 };
                vErrors === null ? vErrors = [err48] : vErrors.push(err48), errors++;
              }
            }
            if (data14.layout !== void 0) {
              let data17 = data14.layout;
              if (typeof data17 != "string") {
                let err49 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/layout", schemaPath: "#/properties/logical-volumes/items/properties/layout/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema135.properties["logical-volumes"].items.properties.layout.type, parentSchema: schema135.properties["logical-volumes"].items.properties.layout, data: data17 };
                vErrors === null ? vErrors = [err49] : vErrors.push(err49), errors++;
              }
              if (!(data17 === "linear" || data17 === "striped" || data17 === "mirrored" || data17 === "other")) {
                let err50 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/layout", schemaPath: "#/properties/logical-volumes/items/properties/layout/enum", keyword: "enum", params: { allowedValues: schema135.properties["logical-volumes"].items.properties.layout.enum }, message: "must be equal to one of the allowed values", schema: schema135.properties["logical-volumes"].items.properties.layout.enum, parentSchema: schema135.properties["logical-volumes"].items.properties.layout, data: data17 };
                vErrors === null ? vErrors = [err50] : vErrors.push(err50), errors++;
              }
            }
            if (data14.stripes !== void 0) {
              let data18 = data14.stripes;
              if (!(typeof data18 == "number" && !(data18 % 1) && !isNaN(data18) && isFinite(data18))) {
                let err51 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/stripes", schemaPath: "#/properties/logical-volumes/items/properties/stripes/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema135.properties["logical-volumes"].items.properties.stripes.type, parentSchema: schema135.properties["logical-volumes"].items.properties.stripes, data: data18 };
                vErrors === null ? vErrors = [err51] : vErrors.push(err51), errors++;
              }
              if (typeof data18 == "number" && isFinite(data18) && (data18 < 1 || isNaN(data18))) {
                let err52 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/stripes", schemaPath: "#/properties/logical-volumes/items/properties/stripes/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1", schema: 1, parentSchema: schema135.properties["logical-volumes"].items.properties.stripes, data: data18 };
                vErrors === null ? vErrors = [err52] : vErrors.push(err52), errors++;
              }
            }
            if (data14.copies !== void 0) {
              let data19 = data14.copies;
              if (!(typeof data19 == "number" && !(data19 % 1) && !isNaN(data19) && isFinite(data19))) {
                let err53 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/copies", schemaPath: "#/properties/logical-volumes/items/properties/copies/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema135.properties["logical-volumes"].items.properties.copies.type, parentSchema: schema135.properties["logical-volumes"].items.properties.copies, data: data19 };
                vErrors === null ? vErrors = [err53] : vErrors.push(err53), errors++;
              }
              if (typeof data19 == "number" && isFinite(data19) && (data19 < 1 || isNaN(data19))) {
                let err54 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/copies", schemaPath: "#/properties/logical-volumes/items/properties/copies/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1", schema: 1, parentSchema: schema135.properties["logical-volumes"].items.properties.copies, data: data19 };
                vErrors === null ? vErrors = [err54] : vErrors.push(err54), errors++;
              }
            }
            if (data14.active !== void 0) {
              let data20 = data14.active;
              if (typeof data20 != "boolean") {
                let err55 = { instancePath: instancePath + "/logical-volumes/" + i1 + "/active", schemaPath: "#/properties/logical-volumes/items/properties/active/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema135.properties["logical-volumes"].items.properties.active.type, parentSchema: schema135.properties["logical-volumes"].items.properties.active, data: data20 };
                vErrors === null ? vErrors = [err55] : vErrors.push(err55), errors++;
              }
            }
          } else {
            let err56 = { instancePath: instancePath + "/logical-volumes/" + i1, schemaPath: "#/properties/logical-volumes/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema135.properties["logical-volumes"].items.type, parentSchema: schema135.properties["logical-volumes"].items, data: data14 };
            vErrors === null ? vErrors = [err56] : vErrors.push(err56), errors++;
          }
        }
      } else {
        let err57 = { instancePath: instancePath + "/logical-volumes", schemaPath: "#/properties/logical-volumes/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema135.properties["logical-volumes"].type, parentSchema: schema135.properties["logical-volumes"], data: data13 };
        vErrors === null ? vErrors = [err57] : vErrors.push(err57), errors++;
      }
    }
  } else {
    let err58 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema135.type, parentSchema: schema135, data };
    vErrors === null ? vErrors = [err58] : vErrors.push(err58), errors++;
  }
  return validate70.errors = vErrors, errors === 0;
}
validate70.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema144 = { title: "SurveyedFileSystem", type: "object", additionalProperties: !1, required: ["device", "type"], description: "One file system or swap area.", properties: { device: { $ref: "#/$defs/text", description: "The device it lies on, by name; of a logical volume, group/logical volume." }, type: { $ref: "#/$defs/text", description: "Its type: ext4, xfs, swap and the like." }, id: { $ref: "#/$defs/text", description: "Its own identifier (UUID), by which the same one is known on another server." }, mounts: { type: "array", items: { type: "string", pattern: "^(/[^\\u0000-\\u001f\\u007f-\\u009f]*|swap)$", maxLength: 4096 }, description: "Where it is mounted now; the first is the one it is known by." }, "in-fstab": { type: "string", pattern: "^(/[^\\u0000-\\u001f\\u007f-\\u009f]*|swap)$", maxLength: 4096, description: "Where fstab mounts it." }, size: { $ref: "#/$defs/bytes", description: "Its own size by its superblock: blocks times block size." }, "block-size": { $ref: "#/$defs/bytes", description: "Its block size." }, metadata: { $ref: "#/$defs/bytes", description: "What it keeps for itself of that." }, reserved: { $ref: "#/$defs/bytes", description: "What only the superuser may fill." }, usable: { $ref: "#/$defs/bytes", description: "What df gives as its size." }, used: { $ref: "#/$defs/bytes", description: "What df gives as used." }, available: { type: "string", pattern: "^(0|-?[1-9][0-9]{0,18})$", description: "What df gives as available." } } }, pattern76 = new RegExp("^(/[^\\u0000-\\u001f\\u007f-\\u009f]*|swap)$", "u"), pattern84 = new RegExp("^(0|-?[1-9][0-9]{0,18})$", "u");
function validate72(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate72.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.device === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "device" }, message: "must have required property 'device'", schema: schema144.required, parentSchema: schema144, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.type === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "type" }, message: "must have required property 'type'", schema: schema144.required, parentSchema: schema144, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    for (let key0 in data)
      if (!func1.call(schema144.properties, key0)) {
        let err2 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema144, data };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    if (data.device !== void 0) {
      let data0 = data.device;
      if (typeof data0 == "string") {
        if (func10(data0) > 255) {
          let err3 = { instancePath: instancePath + "/device", schemaPath: "#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data0 };
          vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
        }
        if (func10(data0) < 1) {
          let err4 = { instancePath: instancePath + "/device", schemaPath: "#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data0 };
          vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
        }
        if (!pattern58.test(data0)) {
          let err5 = { instancePath: instancePath + "/device", schemaPath: "#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data0 };
          vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
        }
      } else {
        let err6 = { instancePath: instancePath + "/device", schemaPath: "#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data0 };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    }
    if (data.type !== void 0) {
      let data1 = data.type;
      if (typeof data1 == "string") {
        if (func10(data1) > 255) {
          let err7 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data1 };
          vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
        }
        if (func10(data1) < 1) {
          let err8 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data1 };
          vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
        }
        if (!pattern58.test(data1)) {
          let err9 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data1 };
          vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
        }
      } else {
        let err10 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data1 };
        vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
      }
    }
    if (data.id !== void 0) {
      let data2 = data.id;
      if (typeof data2 == "string") {
        if (func10(data2) > 255) {
          let err11 = { instancePath: instancePath + "/id", schemaPath: "#/$defs/text/maxLength", keyword: "maxLength", params: { limit: 255 }, message: "must NOT have more than 255 characters", schema: 255, parentSchema: schema129, data: data2 };
          vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
        }
        if (func10(data2) < 1) {
          let err12 = { instancePath: instancePath + "/id", schemaPath: "#/$defs/text/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters", schema: 1, parentSchema: schema129, data: data2 };
          vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
        }
        if (!pattern58.test(data2)) {
          let err13 = { instancePath: instancePath + "/id", schemaPath: "#/$defs/text/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema129, data: data2 };
          vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
        }
      } else {
        let err14 = { instancePath: instancePath + "/id", schemaPath: "#/$defs/text/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema129.type, parentSchema: schema129, data: data2 };
        vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
      }
    }
    if (data.mounts !== void 0) {
      let data3 = data.mounts;
      if (Array.isArray(data3)) {
        let len0 = data3.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data4 = data3[i0];
          if (typeof data4 == "string") {
            if (func10(data4) > 4096) {
              let err15 = { instancePath: instancePath + "/mounts/" + i0, schemaPath: "#/properties/mounts/items/maxLength", keyword: "maxLength", params: { limit: 4096 }, message: "must NOT have more than 4096 characters", schema: 4096, parentSchema: schema144.properties.mounts.items, data: data4 };
              vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
            }
            if (!pattern76.test(data4)) {
              let err16 = { instancePath: instancePath + "/mounts/" + i0, schemaPath: "#/properties/mounts/items/pattern", keyword: "pattern", params: { pattern: "^(/[^\\u0000-\\u001f\\u007f-\\u009f]*|swap)$" }, message: 'must match pattern "^(/[^\\u0000-\\u001f\\u007f-\\u009f]*|swap)$"', schema: "^(/[^\\u0000-\\u001f\\u007f-\\u009f]*|swap)$", parentSchema: schema144.properties.mounts.items, data: data4 };
              vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
            }
          } else {
            let err17 = { instancePath: instancePath + "/mounts/" + i0, schemaPath: "#/properties/mounts/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema144.properties.mounts.items.type, parentSchema: schema144.properties.mounts.items, data: data4 };
            vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
          }
        }
      } else {
        let err18 = { instancePath: instancePath + "/mounts", schemaPath: "#/properties/mounts/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema144.properties.mounts.type, parentSchema: schema144.properties.mounts, data: data3 };
        vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
      }
    }
    if (data["in-fstab"] !== void 0) {
      let data5 = data["in-fstab"];
      if (typeof data5 == "string") {
        if (func10(data5) > 4096) {
          let err19 = { instancePath: instancePath + "/in-fstab", schemaPath: "#/properties/in-fstab/maxLength", keyword: "maxLength", params: { limit: 4096 }, message: "must NOT have more than 4096 characters", schema: 4096, parentSchema: schema144.properties["in-fstab"], data: data5 };
          vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
        }
        if (!pattern76.test(data5)) {
          let err20 = { instancePath: instancePath + "/in-fstab", schemaPath: "#/properties/in-fstab/pattern", keyword: "pattern", params: { pattern: "^(/[^\\u0000-\\u001f\\u007f-\\u009f]*|swap)$" }, message: 'must match pattern "^(/[^\\u0000-\\u001f\\u007f-\\u009f]*|swap)$"', schema: "^(/[^\\u0000-\\u001f\\u007f-\\u009f]*|swap)$", parentSchema: schema144.properties["in-fstab"], data: data5 };
          vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
        }
      } else {
        let err21 = { instancePath: instancePath + "/in-fstab", schemaPath: "#/properties/in-fstab/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema144.properties["in-fstab"].type, parentSchema: schema144.properties["in-fstab"], data: data5 };
        vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
      }
    }
    if (data.size !== void 0) {
      let data6 = data.size;
      if (typeof data6 == "string") {
        if (!pattern62.test(data6)) {
          let err22 = { instancePath: instancePath + "/size", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data6 };
          vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
        }
      } else {
        let err23 = { instancePath: instancePath + "/size", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data6 };
        vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
      }
    }
    if (data["block-size"] !== void 0) {
      let data7 = data["block-size"];
      if (typeof data7 == "string") {
        if (!pattern62.test(data7)) {
          let err24 = { instancePath: instancePath + "/block-size", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data7 };
          vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
        }
      } else {
        let err25 = { instancePath: instancePath + "/block-size", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data7 };
        vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
      }
    }
    if (data.metadata !== void 0) {
      let data8 = data.metadata;
      if (typeof data8 == "string") {
        if (!pattern62.test(data8)) {
          let err26 = { instancePath: instancePath + "/metadata", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data8 };
          vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
        }
      } else {
        let err27 = { instancePath: instancePath + "/metadata", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data8 };
        vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
      }
    }
    if (data.reserved !== void 0) {
      let data9 = data.reserved;
      if (typeof data9 == "string") {
        if (!pattern62.test(data9)) {
          let err28 = { instancePath: instancePath + "/reserved", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data9 };
          vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
        }
      } else {
        let err29 = { instancePath: instancePath + "/reserved", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data9 };
        vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
      }
    }
    if (data.usable !== void 0) {
      let data10 = data.usable;
      if (typeof data10 == "string") {
        if (!pattern62.test(data10)) {
          let err30 = { instancePath: instancePath + "/usable", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data10 };
          vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
        }
      } else {
        let err31 = { instancePath: instancePath + "/usable", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data10 };
        vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
      }
    }
    if (data.used !== void 0) {
      let data11 = data.used;
      if (typeof data11 == "string") {
        if (!pattern62.test(data11)) {
          let err32 = { instancePath: instancePath + "/used", schemaPath: "#/$defs/bytes/pattern", keyword: "pattern", params: { pattern: "^(0|[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|[1-9][0-9]{0,18})$"', schema: "^(0|[1-9][0-9]{0,18})$", parentSchema: schema132, data: data11 };
          vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
        }
      } else {
        let err33 = { instancePath: instancePath + "/used", schemaPath: "#/$defs/bytes/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema132.type, parentSchema: schema132, data: data11 };
        vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
      }
    }
    if (data.available !== void 0) {
      let data12 = data.available;
      if (typeof data12 == "string") {
        if (!pattern84.test(data12)) {
          let err34 = { instancePath: instancePath + "/available", schemaPath: "#/properties/available/pattern", keyword: "pattern", params: { pattern: "^(0|-?[1-9][0-9]{0,18})$" }, message: 'must match pattern "^(0|-?[1-9][0-9]{0,18})$"', schema: "^(0|-?[1-9][0-9]{0,18})$", parentSchema: schema144.properties.available, data: data12 };
          vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
        }
      } else {
        let err35 = { instancePath: instancePath + "/available", schemaPath: "#/properties/available/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema144.properties.available.type, parentSchema: schema144.properties.available, data: data12 };
        vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
      }
    }
  } else {
    let err36 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema144.type, parentSchema: schema144, data };
    vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
  }
  return validate72.errors = vErrors, errors === 0;
}
validate72.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate67(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate67.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.format === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "format" }, message: "must have required property 'format'", schema: schema125.required, parentSchema: schema125, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.server === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "server" }, message: "must have required property 'server'", schema: schema125.required, parentSchema: schema125, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    if (data.at === void 0) {
      let err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "at" }, message: "must have required property 'at'", schema: schema125.required, parentSchema: schema125, data };
      vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
    }
    if (data.tools === void 0) {
      let err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "tools" }, message: "must have required property 'tools'", schema: schema125.required, parentSchema: schema125, data };
      vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
    }
    if (data.unseen === void 0) {
      let err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "unseen" }, message: "must have required property 'unseen'", schema: schema125.required, parentSchema: schema125, data };
      vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
    }
    if (data.devices === void 0) {
      let err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "devices" }, message: "must have required property 'devices'", schema: schema125.required, parentSchema: schema125, data };
      vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
    }
    if (data["volume-groups"] === void 0) {
      let err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "volume-groups" }, message: "must have required property 'volume-groups'", schema: schema125.required, parentSchema: schema125, data };
      vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
    }
    if (data["file-systems"] === void 0) {
      let err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "file-systems" }, message: "must have required property 'file-systems'", schema: schema125.required, parentSchema: schema125, data };
      vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "format" || key0 === "server" || key0 === "at" || key0 === "tools" || key0 === "unseen" || key0 === "devices" || key0 === "volume-groups" || key0 === "file-systems")) {
        let err8 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema125, data };
        vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
      }
    if (data.format !== void 0) {
      let data0 = data.format;
      if (typeof data0 != "string") {
        let err9 = { instancePath: instancePath + "/format", schemaPath: "#/properties/format/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema125.properties.format.type, parentSchema: schema125.properties.format, data: data0 };
        vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
      }
      if (data0 !== "ullage-survey-1") {
        let err10 = { instancePath: instancePath + "/format", schemaPath: "#/properties/format/enum", keyword: "enum", params: { allowedValues: schema125.properties.format.enum }, message: "must be equal to one of the allowed values", schema: schema125.properties.format.enum, parentSchema: schema125.properties.format, data: data0 };
        vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
      }
    }
    if (data.server !== void 0) {
      let data1 = data.server;
      if (typeof data1 == "string") {
        if (!pattern13.test(data1)) {
          let err11 = { instancePath: instancePath + "/server", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data1 };
          vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
        }
      } else {
        let err12 = { instancePath: instancePath + "/server", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data1 };
        vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
      }
    }
    if (data.at !== void 0) {
      let data2 = data.at;
      if (typeof data2 == "string") {
        if (!pattern56.test(data2)) {
          let err13 = { instancePath: instancePath + "/at", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$", parentSchema: schema127, data: data2 };
          vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
        }
      } else {
        let err14 = { instancePath: instancePath + "/at", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema127.type, parentSchema: schema127, data: data2 };
        vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
      }
    }
    if (data.tools !== void 0) {
      let data3 = data.tools;
      if (data3 && typeof data3 == "object" && !Array.isArray(data3)) {
        for (let key1 in data3) {
          let _errs12 = errors;
          if (typeof key1 == "string" && !pattern57.test(key1)) {
            let err15 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/propertyNames/pattern", keyword: "pattern", params: { pattern: "^[a-z0-9][a-z0-9._-]{0,31}$" }, message: 'must match pattern "^[a-z0-9][a-z0-9._-]{0,31}$"', schema: "^[a-z0-9][a-z0-9._-]{0,31}$", parentSchema: schema125.properties.tools.propertyNames, data: key1, propertyName: key1 };
            vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
          }
          var valid3 = _errs12 === errors;
          if (!valid3) {
            let err16 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/propertyNames", keyword: "propertyNames", params: { propertyName: key1 }, message: "property name must be valid", schema: schema125.properties.tools.propertyNames, parentSchema: schema125.properties.tools, data: data3 };
            vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
          }
        }
        for (let key2 in data3) {
          let data4 = data3[key2];
          if (typeof data4 == "string") {
            if (func10(data4) > 64) {
              let err17 = { instancePath: instancePath + "/tools/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tools/additionalProperties/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters", schema: 64, parentSchema: schema125.properties.tools.additionalProperties, data: data4 };
              vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
            }
            if (!pattern58.test(data4)) {
              let err18 = { instancePath: instancePath + "/tools/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tools/additionalProperties/pattern", keyword: "pattern", params: { pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$" }, message: 'must match pattern "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"', schema: "^[^\\u0000-\\u001f\\u007f-\\u009f]*$", parentSchema: schema125.properties.tools.additionalProperties, data: data4 };
              vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
            }
          } else {
            let err19 = { instancePath: instancePath + "/tools/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tools/additionalProperties/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema125.properties.tools.additionalProperties.type, parentSchema: schema125.properties.tools.additionalProperties, data: data4 };
            vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
          }
        }
      } else {
        let err20 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema125.properties.tools.type, parentSchema: schema125.properties.tools, data: data3 };
        vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
      }
    }
    if (data.unseen !== void 0) {
      let data5 = data.unseen;
      if (Array.isArray(data5)) {
        let len0 = data5.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data6 = data5[i0];
          if (typeof data6 != "string") {
            let err21 = { instancePath: instancePath + "/unseen/" + i0, schemaPath: "#/properties/unseen/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema125.properties.unseen.items.type, parentSchema: schema125.properties.unseen.items, data: data6 };
            vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
          }
          if (!(data6 === "devices" || data6 === "mounts" || data6 === "use" || data6 === "volume-groups" || data6 === "fstab" || data6 === "superblocks")) {
            let err22 = { instancePath: instancePath + "/unseen/" + i0, schemaPath: "#/properties/unseen/items/enum", keyword: "enum", params: { allowedValues: schema125.properties.unseen.items.enum }, message: "must be equal to one of the allowed values", schema: schema125.properties.unseen.items.enum, parentSchema: schema125.properties.unseen.items, data: data6 };
            vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
          }
        }
        let i1 = data5.length, j0;
        if (i1 > 1) {
          let indices0 = {};
          for (; i1--; ) {
            let item0 = data5[i1];
            if (typeof item0 == "string") {
              if (typeof indices0[item0] == "number") {
                j0 = indices0[item0];
                let err23 = { instancePath: instancePath + "/unseen", schemaPath: "#/properties/unseen/uniqueItems", keyword: "uniqueItems", params: { i: i1, j: j0 }, message: "must NOT have duplicate items (items ## " + j0 + " and " + i1 + " are identical)", schema: !0, parentSchema: schema125.properties.unseen, data: data5 };
                vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
                break;
              }
              indices0[item0] = i1;
            }
          }
        }
      } else {
        let err24 = { instancePath: instancePath + "/unseen", schemaPath: "#/properties/unseen/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema125.properties.unseen.type, parentSchema: schema125.properties.unseen, data: data5 };
        vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
      }
    }
    if (data.devices !== void 0) {
      let data7 = data.devices;
      if (Array.isArray(data7)) {
        let len1 = data7.length;
        for (let i2 = 0; i2 < len1; i2++)
          validate68(data7[i2], { instancePath: instancePath + "/devices/" + i2, parentData: data7, parentDataProperty: i2, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors), errors = vErrors.length);
      } else {
        let err25 = { instancePath: instancePath + "/devices", schemaPath: "#/properties/devices/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema125.properties.devices.type, parentSchema: schema125.properties.devices, data: data7 };
        vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
      }
    }
    if (data["volume-groups"] !== void 0) {
      let data9 = data["volume-groups"];
      if (Array.isArray(data9)) {
        let len2 = data9.length;
        for (let i3 = 0; i3 < len2; i3++)
          validate70(data9[i3], { instancePath: instancePath + "/volume-groups/" + i3, parentData: data9, parentDataProperty: i3, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors), errors = vErrors.length);
      } else {
        let err26 = { instancePath: instancePath + "/volume-groups", schemaPath: "#/properties/volume-groups/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema125.properties["volume-groups"].type, parentSchema: schema125.properties["volume-groups"], data: data9 };
        vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
      }
    }
    if (data["file-systems"] !== void 0) {
      let data11 = data["file-systems"];
      if (Array.isArray(data11)) {
        let len3 = data11.length;
        for (let i4 = 0; i4 < len3; i4++)
          validate72(data11[i4], { instancePath: instancePath + "/file-systems/" + i4, parentData: data11, parentDataProperty: i4, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors), errors = vErrors.length);
      } else {
        let err27 = { instancePath: instancePath + "/file-systems", schemaPath: "#/properties/file-systems/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema125.properties["file-systems"].type, parentSchema: schema125.properties["file-systems"], data: data11 };
        vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
      }
    }
  } else {
    let err28 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema125.type, parentSchema: schema125, data };
    vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
  }
  return validate67.errors = vErrors, errors === 0;
}
validate67.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var waivers = validate196, schema278 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "waivers.json", title: "WaiversFile", description: "Waivers: exceptions to one rule for one subject, each with a reason, an approver, dates and, better, a ceiling.", type: "object", additionalProperties: !1, required: ["waivers"], properties: { waivers: { type: "array", description: "The waivers.", items: { title: "WaiverDeclaration", type: "object", additionalProperties: !1, required: ["rule", "subject", "reason", "approved-by", "from", "until"], description: "One exception.", properties: { rule: { $ref: "common.json#/$defs/name", description: "The name of the entry in a rule pack, or of the rule.", examples: ["growth-step"] }, name: { $ref: "common.json#/$defs/name", description: "The name of the one entry that is meant, where several entries of the rule apply; left out, any of them is." }, subject: { $ref: "common.json#/$defs/sentence", description: "The name of the one subject it is for.", examples: ["plates-1"] }, kind: { type: "string", enum: ["estate", "site", "team", "label", "scope", "server", "volume", "volume-group", "file-system", "branch"], description: "What kind of subject is meant, where two of different kinds share the name." }, "up-to": { type: ["string", "number"], pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?( ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB))?$", minimum: 0, description: 'The most that the waiver covers, in the rule\'s own measure: a size such as 500 GiB, a monthly amount in quotes such as "150.00", or a number. Exactly this much is covered. `ullage rules NAME` says what the rule measures. Left out, the waiver covers what main had of it when it came, or what the first change that it let through brought, and no more.' }, reason: { $ref: "common.json#/$defs/sentence", description: "Why the exception is right.", examples: ["one-off import"] }, "approved-by": { $ref: "common.json#/$defs/sentence", description: "Who approved it.", examples: ["head of imagery"] }, from: { $ref: "common.json#/$defs/date", description: "The first day on which it applies." }, until: { $ref: "common.json#/$defs/date", description: "The last day on which it applies." } } } } } }, pattern183 = new RegExp("^[0-9]{1,15}(\\.[0-9]{1,15})?( ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB))?$", "u");
function validate196(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate196.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.waivers === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "waivers" }, message: "must have required property 'waivers'", schema: schema278.required, parentSchema: schema278, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    for (let key0 in data)
      if (key0 !== "waivers") {
        let err1 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema278, data };
        vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
      }
    if (data.waivers !== void 0) {
      let data0 = data.waivers;
      if (Array.isArray(data0)) {
        let len0 = data0.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data1 = data0[i0];
          if (data1 && typeof data1 == "object" && !Array.isArray(data1)) {
            if (data1.rule === void 0) {
              let err2 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema278.properties.waivers.items.required, parentSchema: schema278.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
            }
            if (data1.subject === void 0) {
              let err3 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "subject" }, message: "must have required property 'subject'", schema: schema278.properties.waivers.items.required, parentSchema: schema278.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
            }
            if (data1.reason === void 0) {
              let err4 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "reason" }, message: "must have required property 'reason'", schema: schema278.properties.waivers.items.required, parentSchema: schema278.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
            }
            if (data1["approved-by"] === void 0) {
              let err5 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "approved-by" }, message: "must have required property 'approved-by'", schema: schema278.properties.waivers.items.required, parentSchema: schema278.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
            }
            if (data1.from === void 0) {
              let err6 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "from" }, message: "must have required property 'from'", schema: schema278.properties.waivers.items.required, parentSchema: schema278.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
            }
            if (data1.until === void 0) {
              let err7 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "until" }, message: "must have required property 'until'", schema: schema278.properties.waivers.items.required, parentSchema: schema278.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
            }
            for (let key1 in data1)
              if (!func1.call(schema278.properties.waivers.items.properties, key1)) {
                let err8 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema278.properties.waivers.items, data: data1 };
                vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
              }
            if (data1.rule !== void 0) {
              let data2 = data1.rule;
              if (typeof data2 == "string") {
                if (!pattern13.test(data2)) {
                  let err9 = { instancePath: instancePath + "/waivers/" + i0 + "/rule", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data2 };
                  vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
                }
              } else {
                let err10 = { instancePath: instancePath + "/waivers/" + i0 + "/rule", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data2 };
                vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
              }
            }
            if (data1.name !== void 0) {
              let data3 = data1.name;
              if (typeof data3 == "string") {
                if (!pattern13.test(data3)) {
                  let err11 = { instancePath: instancePath + "/waivers/" + i0 + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema79, data: data3 };
                  vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
                }
              } else {
                let err12 = { instancePath: instancePath + "/waivers/" + i0 + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema79.type, parentSchema: schema79, data: data3 };
                vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
              }
            }
            if (data1.subject !== void 0) {
              let data4 = data1.subject;
              if (typeof data4 == "string") {
                if (!pattern28.test(data4)) {
                  let err13 = { instancePath: instancePath + "/waivers/" + i0 + "/subject", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema94, data: data4 };
                  vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
                }
              } else {
                let err14 = { instancePath: instancePath + "/waivers/" + i0 + "/subject", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema94.type, parentSchema: schema94, data: data4 };
                vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
              }
            }
            if (data1.kind !== void 0) {
              let data5 = data1.kind;
              if (typeof data5 != "string") {
                let err15 = { instancePath: instancePath + "/waivers/" + i0 + "/kind", schemaPath: "#/properties/waivers/items/properties/kind/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema278.properties.waivers.items.properties.kind.type, parentSchema: schema278.properties.waivers.items.properties.kind, data: data5 };
                vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
              }
              if (!(data5 === "estate" || data5 === "site" || data5 === "team" || data5 === "label" || data5 === "scope" || data5 === "server" || data5 === "volume" || data5 === "volume-group" || data5 === "file-system" || data5 === "branch")) {
                let err16 = { instancePath: instancePath + "/waivers/" + i0 + "/kind", schemaPath: "#/properties/waivers/items/properties/kind/enum", keyword: "enum", params: { allowedValues: schema278.properties.waivers.items.properties.kind.enum }, message: "must be equal to one of the allowed values", schema: schema278.properties.waivers.items.properties.kind.enum, parentSchema: schema278.properties.waivers.items.properties.kind, data: data5 };
                vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
              }
            }
            if (data1["up-to"] !== void 0) {
              let data6 = data1["up-to"];
              if (typeof data6 != "string" && !(typeof data6 == "number" && isFinite(data6))) {
                let err17 = { instancePath: instancePath + "/waivers/" + i0 + "/up-to", schemaPath: "#/properties/waivers/items/properties/up-to/type", keyword: "type", params: { type: schema278.properties.waivers.items.properties["up-to"].type }, message: "must be string,number", schema: schema278.properties.waivers.items.properties["up-to"].type, parentSchema: schema278.properties.waivers.items.properties["up-to"], data: data6 };
                vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
              }
              if (typeof data6 == "number" && isFinite(data6) && (data6 < 0 || isNaN(data6))) {
                let err18 = { instancePath: instancePath + "/waivers/" + i0 + "/up-to", schemaPath: "#/properties/waivers/items/properties/up-to/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema278.properties.waivers.items.properties["up-to"], data: data6 };
                vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
              }
              if (typeof data6 == "string" && !pattern183.test(data6)) {
                let err19 = { instancePath: instancePath + "/waivers/" + i0 + "/up-to", schemaPath: "#/properties/waivers/items/properties/up-to/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?( ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB))?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?( ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB))?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?( ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB))?$", parentSchema: schema278.properties.waivers.items.properties["up-to"], data: data6 };
                vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
              }
            }
            if (data1.reason !== void 0) {
              let data7 = data1.reason;
              if (typeof data7 == "string") {
                if (!pattern28.test(data7)) {
                  let err20 = { instancePath: instancePath + "/waivers/" + i0 + "/reason", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema94, data: data7 };
                  vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
                }
              } else {
                let err21 = { instancePath: instancePath + "/waivers/" + i0 + "/reason", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema94.type, parentSchema: schema94, data: data7 };
                vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
              }
            }
            if (data1["approved-by"] !== void 0) {
              let data8 = data1["approved-by"];
              if (typeof data8 == "string") {
                if (!pattern28.test(data8)) {
                  let err22 = { instancePath: instancePath + "/waivers/" + i0 + "/approved-by", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema94, data: data8 };
                  vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
                }
              } else {
                let err23 = { instancePath: instancePath + "/waivers/" + i0 + "/approved-by", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema94.type, parentSchema: schema94, data: data8 };
                vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
              }
            }
            if (data1.from !== void 0) {
              let data9 = data1.from;
              if (typeof data9 == "string") {
                if (!pattern4.test(data9)) {
                  let err24 = { instancePath: instancePath + "/waivers/" + i0 + "/from", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data9 };
                  vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
                }
              } else {
                let err25 = { instancePath: instancePath + "/waivers/" + i0 + "/from", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data9 };
                vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
              }
            }
            if (data1.until !== void 0) {
              let data10 = data1.until;
              if (typeof data10 == "string") {
                if (!pattern4.test(data10)) {
                  let err26 = { instancePath: instancePath + "/waivers/" + i0 + "/until", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema33, data: data10 };
                  vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
                }
              } else {
                let err27 = { instancePath: instancePath + "/waivers/" + i0 + "/until", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data10 };
                vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
              }
            }
          } else {
            let err28 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema278.properties.waivers.items.type, parentSchema: schema278.properties.waivers.items, data: data1 };
            vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
          }
        }
      } else {
        let err29 = { instancePath: instancePath + "/waivers", schemaPath: "#/properties/waivers/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema278.properties.waivers.type, parentSchema: schema278.properties.waivers, data: data0 };
        vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
      }
    }
  } else {
    let err30 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema278.type, parentSchema: schema278, data };
    vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
  }
  return validate196.errors = vErrors, errors === 0;
}
validate196.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var validators = { "audit-record": audit_record, estate, gathered, "price-list": price_list, procedure, "provider-survey": provider_survey, "rule-pack": rule_pack, settings, survey, waivers };
export {
  audit_record,
  estate,
  gathered,
  price_list,
  procedure,
  provider_survey,
  rule_pack,
  settings,
  survey,
  validators,
  waivers
};
