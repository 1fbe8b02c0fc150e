export function indexText(folder: string): string;
