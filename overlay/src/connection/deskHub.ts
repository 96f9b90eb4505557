/**
 * The hub of the panel at an address. The presenter and the co-hosts have a hub each, and so a cookie each: panels of both can be
 * open in one browser.
 */
export function deskHubOf(pathname: string): '/hubs/presenter' | '/hubs/desk' {
  return pathname === '/desk' ? '/hubs/desk' : '/hubs/presenter';
}
