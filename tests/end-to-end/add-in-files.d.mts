export const SITE: string;
export const HOST: string;
export const OFFICIAL: string;
export function answerFor(url: string): { status: number; body?: Buffer; contentType?: string } | undefined;
