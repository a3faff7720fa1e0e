/** What stands wherever wood is glued; temperatures as published for hide glue, the rest common practice. */
export const GLUE_CAUTION =
  'Hot glue and its water bath scald: hide glue works at 60 to 63 °C and weakens above 66 °C; set the pot where it cannot tip, keep water at hand, fit and clamp everything dry first, mind fingers in the clamps. With other glues follow the sheet that comes with them: gloves, fresh air, eyes.';
