export function makeSamples(): Promise<Map<string, { readonly bytes: Uint8Array; readonly summary: string }>>;
