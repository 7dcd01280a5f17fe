// Never ends by itself.
setInterval(() => {}, 1_000);
