using System.IO.Compression;
using UglyToad.PdfPig.Filters;
using UglyToad.PdfPig.Tokens;

namespace Slantwise.Paper.Reading;

/// <summary>The library's filters, held to what a stream of a PDF may unpack to: a few thousand bytes can be made to unpack to more than a machine has.</summary>
/// <param name="maxByteCount">Bytes of one unpacked stream.</param>
internal sealed class CappedFilters(long maxByteCount) : IFilterProvider
{
    private readonly IFilterProvider _all = DefaultFilterProvider.Instance;

    public IReadOnlyList<IFilter> GetFilters(DictionaryToken dictionary) => Capped(_all.GetFilters(dictionary));

    public IReadOnlyList<IFilter> GetNamedFilters(IReadOnlyList<NameToken> names) => Capped(_all.GetNamedFilters(names));

    public IReadOnlyList<IFilter> GetAllFilters() => Capped(_all.GetAllFilters());

    private IReadOnlyList<IFilter> Capped(IReadOnlyList<IFilter> filters) => [.. filters.Select(f => new Filter(f, maxByteCount))];

    private sealed class Filter(IFilter inner, long maxByteCount) : IFilter
    {
        // The most that a byte can stand for, roughly and upwards: a run of 128 is two bytes; a code of 12 bits stands for at most some 4,000.
        private const long MostOfARun = 64;
        private const long MostOfACode = 2_800;

        public bool IsSupported => inner.IsSupported;

        public Memory<byte> Decode(Memory<byte> input, DictionaryToken streamDictionary, IFilterProvider filterProvider, int filterIndex)
        {
            var byteCount = inner switch
            {
                FlateFilter => InflatedCount(input),
                LzwFilter => input.Length * MostOfACode,
                RunLengthFilter => input.Length * MostOfARun,
                Ascii85Filter or AsciiHexDecodeFilter => input.Length * 4L,
                // Pictures in formats of their own are unpacked elsewhere, by their size; a page's own text in one of them is nobody's.
                _ => long.MaxValue,
            };
            return byteCount <= maxByteCount
                ? inner.Decode(input, streamDictionary, filterProvider, filterIndex)
                : throw new InvalidDataException($"A stream of the PDF unpacks to more than {maxByteCount} bytes.");
        }

        // Unpacked once to be counted, into a buffer that is used again; the two bytes before the packed ones and the sum after them do not matter to that.
        private long InflatedCount(Memory<byte> input)
        {
            var sum = 0L;
            if (input.Length <= 2) return sum;
            using var stream = new DeflateStream(new MemoryStream(input[2..].ToArray(), writable: false), CompressionMode.Decompress);
            var buffer = new byte[1 << 16];
            try
            {
                for (var count = stream.Read(buffer); count > 0 && sum <= maxByteCount; count = stream.Read(buffer)) sum += count;
            }
            // Broken from here on: the library gets no further either.
            catch (InvalidDataException)
            {
            }
            return sum;
        }
    }
}
