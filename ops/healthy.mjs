// Ends with 0 when the service on this machine says that it is ready. For a container's health check.
const port = process.env.NINTHPOUR_PORT ?? '8080';
try {
  const { ok } = await fetch(`http://127.0.0.1:${port}/healthz`, { signal: AbortSignal.timeout(4_000) });
  process.exitCode = ok ? 0 : 1;
} catch {
  process.exitCode = 1;
}
