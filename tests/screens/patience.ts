/** Waiting long enough for a loaded machine; nothing is measured by it. */
import { configure } from "@testing-library/preact";
import { vi } from "vitest";

configure({ asyncUtilTimeout: 15_000 });
vi.setConfig({ testTimeout: 60_000 });
