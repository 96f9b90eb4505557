/** Seconds as `M:SS` or, from one hour on, `H:MM:SS`. */
export function timeText(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  const two = (value: number) => String(value).padStart(2, '0');
  const [hours, minutes] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60];
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
}

/** Seconds from `M:SS`, `H:MM:SS` or bare seconds; null where the text is no time. */
export function timeOf(text: string): number | null {
  const parts = /^(?:(?:(\d{1,2}):)?(\d{1,3}):)?(\d{1,5}(?:\.\d{1,3})?)$/.exec(text.trim());
  if (!parts) return null;
  const [, hours, minutes, seconds] = parts;
  if (minutes !== undefined && Number(seconds) >= 60) return null;
  if (hours !== undefined && Number(minutes) >= 60) return null;
  return Number(hours ?? 0) * 3600 + Number(minutes ?? 0) * 60 + Number(seconds);
}
