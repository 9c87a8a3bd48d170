/** Fluent's light and dark colours as CSS variables on the pane, following what the system prefers. */
import { webDarkTheme, webLightTheme } from "@fluentui/tokens";

const TOKENS = [
  "fontFamilyBase",
  "colorNeutralForeground1",
  "colorNeutralForeground2",
  "colorNeutralForeground3",
  "colorNeutralBackground1",
  "colorNeutralBackground2",
  "colorNeutralBackground3",
  "colorNeutralStroke1",
  "colorNeutralStroke2",
  "colorNeutralStrokeAccessible",
  "colorStrokeFocus2",
  "colorBrandForeground1",
  "colorBrandForegroundLink",
  "colorBrandBackground",
  "colorBrandBackgroundHover",
  "colorBrandBackgroundPressed",
  "colorBrandBackground2",
  "colorNeutralForegroundOnBrand",
  "colorStatusDangerForeground1",
  "colorStatusDangerBackground1",
  "colorStatusDangerBorder1",
  "colorStatusWarningForeground3",
  "colorStatusWarningBackground1",
  "colorStatusWarningBorder1",
  "colorStatusSuccessForeground1",
  "colorStatusSuccessBackground1",
] as const satisfies readonly (keyof typeof webLightTheme)[];

/** Sets the variables (`--mw-` and Fluent's name) now and whenever the preference changes. */
export function followTheme(element: HTMLElement): void {
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  const apply = (): void => {
    const theme = dark.matches ? webDarkTheme : webLightTheme;
    for (const token of TOKENS) element.style.setProperty(`--mw-${token}`, theme[token]);
    element.dataset["theme"] = dark.matches ? "dark" : "light";
  };
  apply();
  dark.addEventListener("change", apply);
}
