const HEAD_BYTES = 44;

/** Samples of one channel as a WAV file: RIFF with one chunk of format and one of data (Microsoft and IBM, 1991). */
export function wav(samples: Buffer, rate: number, bits: 8 | 16): Buffer<ArrayBuffer> {
  const head = Buffer.alloc(HEAD_BYTES);
  const bytes = bits / 8;
  head.write("RIFF", 0);
  head.writeUInt32LE(HEAD_BYTES - 8 + samples.length, 4);
  head.write("WAVEfmt ", 8);
  head.writeUInt32LE(16, 16);
  head.writeUInt16LE(1, 20);
  head.writeUInt16LE(1, 22);
  head.writeUInt32LE(rate, 24);
  head.writeUInt32LE(rate * bytes, 28);
  head.writeUInt16LE(bytes, 32);
  head.writeUInt16LE(bits, 34);
  head.write("data", 36);
  head.writeUInt32LE(samples.length, 40);
  return Buffer.concat([head, samples]);
}
