import { LocaleType, LogLevel, mergeLocales, Univer } from "@univerjs/core";
import type { Plugin, PluginCtor } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { ICanvasColorService } from "@univerjs/engine-render";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import conditionalFormattingWords from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import dataValidationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import type { FWorkbook } from "@univerjs/sheets/facade";
import { defaultTheme } from "@univerjs/themes";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";

/** The in-browser grid: its engine, its programming interface and its one workbook. */
export interface Grid {
  readonly univer: Univer;
  readonly api: FUniver;
  readonly book: FWorkbook;
}

/**
 * Mounts the grid with one blank sheet in the element of this id. Formula bar and sheet tabs stay; the
 * toolbars go, since the task pane beside it is what the page is about.
 */
export function mountGrid(containerId: string, look: { readonly dark: boolean }): Grid {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(coreWords, conditionalFormattingWords, dataValidationWords) },
    theme: defaultTheme,
    darkMode: look.dark,
    logLevel: LogLevel.ERROR,
  });
  const presets = [
    UniverSheetsCorePreset({
      container: containerId,
      header: true,
      toolbar: false,
      formulaBar: true,
      footer: { statisticBar: false },
      disableAutoFocus: true,
      sheets: { disableForceStringAlert: true, disableForceStringMark: true },
    }),
    UniverSheetsConditionalFormattingPreset(),
    // Its search box would take the keyboard away from a coach who types straight into the cell.
    UniverSheetsDataValidationPreset({ showSearchOnDropdown: false, showEditOnDropdown: false }),
  ];
  for (const [plugin, options] of pluginsOf(presets)) univer.registerPlugin(plugin, options);
  const api = FUniver.newAPI(univer);
  const book = api.createWorkbook({ name: "Meetward" });
  // Paper stays white in the dark, as in other spreadsheet programs, or the phases would change their colours.
  univer.__getInjector().get(ICanvasColorService).getRenderColor = (colour) => colour;
  return { univer, api, book };
}

type PluginEntry = readonly [PluginCtor<Plugin>, ConstructorParameters<PluginCtor<Plugin>>[0]];

/** Every plugin of the presets once: two presets may bring the same one. */
function pluginsOf(presets: readonly ReturnType<typeof UniverSheetsCorePreset>[]): Iterable<PluginEntry> {
  const plugins = new Map<string, PluginEntry>();
  for (const entry of presets.flatMap((preset) => preset.plugins)) {
    const [plugin, options] = Array.isArray(entry) ? entry : [entry, undefined];
    plugins.set(plugin.pluginName, [plugin, options]);
  }
  return plugins.values();
}
