// Unpacks LZMA, in which the engine stands in the carried file (site/carried.go
// packs it), after Igor Pavlov, LZMA specification, 2015 (from memory; what a
// library packed is unpacked in TestUnpack). It comes out in parts, so that the
// engine can be compiled while it is still being unpacked.

const literalStates = 7; // of the twelve states, those after a literal
const partBytes = 1 << 19;

/** Yields what the bytes hold, in parts: subarrays of one array of its whole length. */
export function* unpack(input) {
  // The header: properties, size of the window, size of the whole.
  const lc = input[0] % 9;
  const lp = Math.floor(input[0] / 9) % 5;
  const pb = Math.floor(input[0] / 45);
  const size = new DataView(input.buffer, input.byteOffset).getUint32(5, true);
  const out = new Uint8Array(size);
  const positions = (1 << pb) - 1;
  const literalPositions = (1 << lp) - 1;

  // A bit is coded by how likely it is 0, in 2048ths. All these models lie in
  // one array; those of a number of n bits are a tree of 2^n.
  let room = 0;
  const models = (n) => {
    room += n;
    return room - n;
  };
  const isMatch = models(12 << 4);
  const isRep = models(12);
  const isRep0 = models(12);
  const isRep0Long = models(12 << 4);
  const isRep1 = models(12);
  const isRep2 = models(12);
  const lengths = () => ({ choice: models(2), low: models(16 << 3), mid: models(16 << 3), high: models(256) });
  const matchLength = lengths();
  const repLength = lengths();
  const slots = models(4 << 6);
  const special = models(128);
  const align = models(16);
  const literals = models(0x300 << (lc + lp));
  const p = new Uint16Array(room).fill(1024);

  let at = 18; // in the input: past the header and the coder's first five bytes
  let code = ((input[14] << 24) | (input[15] << 16) | (input[16] << 8) | input[17]) >>> 0;
  let range = 0xffffffff;

  const bit = (i) => {
    const bound = (range >>> 11) * p[i];
    let b = 0;
    if (code < bound) {
      range = bound;
      p[i] += (2048 - p[i]) >>> 5;
    } else {
      range -= bound;
      code -= bound;
      p[i] -= p[i] >>> 5;
      b = 1;
    }
    if (range < 0x1000000) {
      range = (range << 8) >>> 0;
      code = ((code << 8) | input[at++]) >>> 0;
    }
    return b;
  };
  const tree = (i, bits) => {
    let m = 1;
    for (let n = bits; n > 0; n--) m = (m << 1) | bit(i + m);
    return m - (1 << bits);
  };
  const backwards = (i, bits) => {
    let m = 1;
    let v = 0;
    for (let n = 0; n < bits; n++) {
      const b = bit(i + m);
      m = (m << 1) | b;
      v |= b << n;
    }
    return v;
  };
  const direct = (bits) => {
    let v = 0;
    for (let n = bits; n > 0; n--) {
      range >>>= 1;
      let b = 0;
      if (code >= range) {
        code -= range;
        b = 1;
      }
      v = (v << 1) | b;
      if (range < 0x1000000) {
        range = (range << 8) >>> 0;
        code = ((code << 8) | input[at++]) >>> 0;
      }
    }
    return v;
  };
  const length = (of, place) => {
    if (bit(of.choice) === 0) return tree(of.low + (place << 3), 3);
    if (bit(of.choice + 1) === 0) return 8 + tree(of.mid + (place << 3), 3);
    return 16 + tree(of.high, 8);
  };

  let state = 0;
  let rep0 = 0;
  let rep1 = 0;
  let rep2 = 0;
  let rep3 = 0;
  let done = 0;
  let told = 0;
  while (done < size) {
    const place = done & positions;
    if (bit(isMatch + (state << 4) + place) === 0) {
      const before = done > 0 ? out[done - 1] : 0;
      const i = literals + 0x300 * (((done & literalPositions) << lc) + (before >> (8 - lc)));
      let m = 1;
      if (state >= literalStates) {
        let like = out[done - rep0 - 1];
        do {
          const want = (like >> 7) & 1;
          like <<= 1;
          const b = bit(i + ((1 + want) << 8) + m);
          m = (m << 1) | b;
          if (want !== b) break;
        } while (m < 0x100);
      }
      while (m < 0x100) m = (m << 1) | bit(i + m);
      out[done++] = m;
      state = state < 4 ? 0 : state < 10 ? state - 3 : state - 6;
    } else {
      let count;
      if (bit(isRep + state) === 0) {
        rep3 = rep2;
        rep2 = rep1;
        rep1 = rep0;
        count = length(matchLength, place);
        state = state < literalStates ? 7 : 10;
        const slot = tree(slots + (Math.min(count, 3) << 6), 6);
        if (slot < 4) rep0 = slot;
        else {
          const bits = (slot >> 1) - 1;
          rep0 = (2 | (slot & 1)) << bits;
          if (slot < 14) rep0 += backwards(special + rep0 - slot, bits);
          else rep0 += (direct(bits - 4) << 4) + backwards(align, 4);
        }
      } else {
        let short = false;
        if (bit(isRep0 + state) === 0) short = bit(isRep0Long + (state << 4) + place) === 0;
        else {
          let far;
          if (bit(isRep1 + state) === 0) far = rep1;
          else {
            if (bit(isRep2 + state) === 0) far = rep2;
            else {
              far = rep3;
              rep3 = rep2;
            }
            rep2 = rep1;
          }
          rep1 = rep0;
          rep0 = far;
        }
        if (short) {
          state = state < literalStates ? 9 : 11;
          count = -1;
        } else {
          count = length(repLength, place);
          state = state < literalStates ? 8 : 11;
        }
      }
      const end = Math.min(done + count + 2, size);
      for (let from = done - rep0 - 1; done < end; ) out[done++] = out[from++];
    }
    if (done - told >= partBytes) {
      yield out.subarray(told, done);
      told = done;
    }
  }
  yield out.subarray(told);
}
