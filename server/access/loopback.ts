/** Whether a host, as a setting or an address names it, is this machine alone. */
export const isLoopback = (host: string): boolean => /^(?:localhost|127\.\d+\.\d+\.\d+|::1|\[::1\])$/i.test(host);
