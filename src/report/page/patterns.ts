/** The patterns that tell parts of a drawing apart where shade does not. */
import { type Html, html } from './html.ts';

export const patterns: Html = html`<svg class="patterns" width="0" height="0" aria-hidden="true" focusable="false"><defs>
<pattern id="lines" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="ground" width="5" height="5"/><rect class="mark" width="1.6" height="5"/></pattern>
<pattern id="dots" width="5" height="5" patternUnits="userSpaceOnUse"><rect class="ground" width="5" height="5"/><circle class="mark" cx="2.5" cy="2.5" r="1.1"/></pattern>
<pattern id="cross" width="6" height="6" patternUnits="userSpaceOnUse"><rect class="ground" width="6" height="6"/><rect class="mark" width="6" height="1.2"/><rect class="mark" width="1.2" height="6"/></pattern>
</defs></svg>`;
