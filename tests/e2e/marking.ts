import { expect, type Locator, type Page } from "@playwright/test";
import { leaveFields } from "./keyboard.ts";
import { onDisk } from "./workshop.ts";

/** The row in hand of the log sheet. */
export const handOf = (page: Page): Locator => page.locator("[data-hand]");

/** Takes the film to a second by pressing the scale beside the sheet; the whole film stands on it. */
export async function filmTo(page: Page, second: number, length: number): Promise<void> {
  const scale = page.locator(".scale");
  const box = await scale.boundingBox();
  if (!box) throw new Error("the scale is not shown");
  await scale.click({ position: { x: box.width / 2, y: (second / length) * box.height } });
  // A press is as exact as a pixel of the scale.
  await expect
    .poll(async () => {
      const words = (await page.locator(".transport .frame").textContent()) ?? "";
      return Math.abs(Number(/frame (\d+)/.exec(words)?.[1] ?? Number.NaN) / 25 - second);
    })
    .toBeLessThan(0.3);
}

/** Drops a mark by its key and fills in its fields, by their names; those seldom asked for are unfolded first. */
export async function markAs(page: Page, key: string, fields: Record<string, string>): Promise<void> {
  await dropMark(page, key);
  await fillHand(page, fields);
  await leaveFields(page);
  await onDisk(page);
}

/** Drops a mark by its key; it lies in hand, with nothing in its fields. */
export async function dropMark(page: Page, key: string): Promise<void> {
  await page.keyboard.press(key);
  await expect(handOf(page).locator("[data-field]").nth(1)).toHaveValue("");
}

/** Fills in fields of the row in hand. */
export async function fillHand(page: Page, fields: Record<string, string>): Promise<void> {
  const hand = handOf(page);
  for (const [name, text] of Object.entries(fields)) {
    const field = hand.locator(`[data-field="${name}"]`);
    if (!(await field.isVisible())) await hand.getByText(/^More about this/).click();
    if ((await field.evaluate((one) => one.tagName)) === "SELECT") await field.selectOption(text);
    else await field.fill(text);
  }
}
