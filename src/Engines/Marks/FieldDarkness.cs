namespace Slantwise.Engines.Marks;

/// <summary>How dark each place in and around a field is: 0 for paper as it is there, 1 for solid print.</summary>
internal sealed class FieldDarkness
{
    private const double PaperShare = .7;
    private const double LeastPaperFraction = .72;

    private FieldDarkness(FieldPatch patch, double whiteFraction, double whiteGrey, double grainFraction) =>
        (Patch, WhiteFraction, WhiteGrey, GrainFraction) = (patch, whiteFraction, whiteGrey, grainFraction);

    /// <summary>The darkness, smoothed over half a millimetre.</summary>
    public FieldPatch Patch { get; }

    /// <summary>Paper around the field against what it is in the wider surroundings; not a number where too little of it is to be seen.</summary>
    public double WhiteFraction { get; }

    /// <summary>The grey of paper around it, 0 to 255.</summary>
    public double WhiteGrey { get; }

    /// <summary>How rough paper looks: half its values lie within so much darkness, before smoothing.</summary>
    public double GrainFraction { get; }

    /// <summary>Of one field.</summary>
    /// <param name="place">The form.</param>
    /// <param name="field">The field, where it was seen.</param>
    /// <param name="zones">Its zones.</param>
    /// <param name="isHidden">Pixels around it that belong to another field.</param>
    /// <param name="usualWhiteFraction">What stands in where too little paper is to be seen around it.</param>
    /// <param name="solidFraction">How much darker than paper solid print is.</param>
    public static FieldDarkness Of(FormPlace place, MarkField field, FieldZones zones, bool[] isHidden, double usualWhiteFraction, double solidFraction)
    {
        var greys = FieldPatch.Of(place.Level, place.Map, field, FieldZones.MarginMm);
        var whites = greys.Like(place.White.Level, place.Map, field, 2);
        var values = greys.Values;
        for (var i = 0; i < values.Length; i++) values[i] /= Math.Max(whites.Values[i], 1);
        var shares = new Shares(stackalloc int[Shares.StepCount]);
        foreach (var (pixel, _) in zones.Around)
            if (!isHidden[pixel]) shares.Add(values[pixel]);
        var paper = shares.Below(PaperShare);
        var isSeen = paper >= LeastPaperFraction;
        var white = isSeen ? paper : usualWhiteFraction;
        var grain = isSeen ? (shares.Below(.8) - shares.Below(.55)) * 2 / white / solidFraction : 0;
        var scale = (float)(1 / (white * solidFraction));
        var nothing = (float)(1 / solidFraction);
        for (var i = 0; i < values.Length; i++) values[i] = nothing - values[i] * scale;
        Smooth(greys);
        return new(greys, isSeen ? paper : double.NaN, whites.Values[values.Length / 2] * white, grain);
    }

    // The mean of three in each direction.
    private static void Smooth(FieldPatch patch)
    {
        var (width, height, values) = (patch.Width, patch.Height, patch.Values);
        var rows = new float[values.Length];
        for (var i = 1; i < values.Length - 1; i++) rows[i] = values[i - 1] + values[i] + values[i + 1];
        for (var y = 1; y < height - 1; y++)
        {
            var above = rows.AsSpan((y - 1) * width, width);
            var here = rows.AsSpan(y * width, width);
            var below = rows.AsSpan((y + 1) * width, width);
            var to = values.AsSpan(y * width, width);
            for (var x = 1; x < width - 1; x++) to[x] = (above[x] + here[x] + below[x]) * (1 / 9f);
        }
    }
}
