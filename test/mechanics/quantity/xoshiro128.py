"""Prints the reference values of random.test.ts: xoshiro128** 1.1 seeded by splitmix32, in Python's whole numbers."""

MASK = 0xFFFFFFFF


def splitmix32(weyl):
    while True:
        weyl = (weyl + 0x9E3779B9) & MASK
        z = weyl
        z = ((z ^ z >> 16) * 0x85EBCA6B) & MASK
        z = ((z ^ z >> 13) * 0xC2B2AE35) & MASK
        yield z ^ z >> 16


def rotated(x, k):
    return (x << k | x >> 32 - k) & MASK


def xoshiro128(s):
    while True:
        yield rotated(s[1] * 5 & MASK, 7) * 9 & MASK
        t = s[1] << 9 & MASK
        s[2] ^= s[0]
        s[3] ^= s[1]
        s[1] ^= s[2]
        s[0] ^= s[3]
        s[2] ^= t
        s[3] = rotated(s[3], 11)


words = xoshiro128([1, 2, 3, 4])
print([next(words) for _ in range(10)])
for seed in (0, 1, 2026, 4294967295):
    mixed = splitmix32(seed)
    state = [next(mixed) for _ in range(4)]
    print(seed, state, end=" ")
    words = xoshiro128(state)
    numbers = [((next(words) >> 5) * 2**26 + (next(words) >> 6)) / 2**53 for _ in range(1000)]
    print(numbers[0], numbers[-1])
