import { expect, type Page } from "@playwright/test";

/** Presses Tab until what has the focus bears that name, as a person without a mouse does. */
export async function tabTo(page: Page, name: string | RegExp, most = 250): Promise<void> {
  for (let presses = 0; presses < most; presses++) {
    const focused = await page.evaluate(() => {
      const element = document.activeElement as HTMLElement | null;
      if (!element || element === document.body) return "";
      const labels = [...((element as HTMLInputElement).labels ?? [])].map((label) => label.textContent);
      return element.getAttribute("aria-label") ?? labels[0] ?? element.textContent ?? "";
    });
    const said = focused.replace(/\s+/g, " ").trim();
    if (typeof name === "string" ? said.startsWith(name) : name.test(said)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`Tab never came to “${name}”`);
}

/** Goes to what bears that name and presses Enter on it. */
export async function press(page: Page, name: string | RegExp): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press("Enter");
}

/** Chooses files in the chooser that opens when Enter, or Space, is pressed on what has the focus. */
export async function chooseFiles(page: Page, files: string | string[]): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await page.keyboard.press("Enter");
  await (await chooser).setFiles(files);
}

/** Leaves the fields of the row in hand. */
export async function leaveFields(page: Page): Promise<void> {
  await page.keyboard.press("Escape");
  await expect(page.locator(".log-body")).toBeFocused();
}
