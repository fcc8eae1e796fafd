namespace Slantwise.Engines.Marks;

/// <summary>Takes the traits of all fields of a form that was found.</summary>
internal sealed class TraitsReader
{
    private const double OwnShiftFraction = .7;
    private const double InkOfOutlineFraction = .28;
    private const double LeastInkFraction = .09;
    private const double NeighbourMm = .5;
    private const int AroundLeastCount = 4;
    private const double RingOfRimFraction = 1.4;
    private const int NearestStepCount = 25;
    private const int NearestLeastCount = 6;

    private readonly SheetLayout _layout;
    private readonly FormPlace _place;
    private readonly double _solidFraction;
    private readonly FieldZones[] _zones;
    private readonly FieldDarkness[] _fields;
    private readonly OutlinePoint[][] _outlines;
    private readonly bool[][] _hidden;

    private TraitsReader(SheetLayout layout, FormPlace place)
    {
        (_layout, _place) = (layout, place);
        var contrasts = place.Anchors.Select(a => a.ContrastFraction).Order().ToArray();
        _solidFraction = Math.Max(.05, contrasts[contrasts.Length / 2]);
        var shapes = new Dictionary<(double, double, bool), (FieldZones, OutlinePoint[])>();
        // A patch adds its own blur: the mean of three of its pixels.
        var blurMm = double.Hypot(place.BlurMm, .15);
        var outlineMm = Math.Min(.85, .15 + Math.Max(.32, 1.1 * blurMm));
        var n = layout.Fields.Count;
        (_zones, _fields, _outlines, _hidden) = (new FieldZones[n], new FieldDarkness[n], new OutlinePoint[n][], new bool[n][]);
        for (var i = 0; i < n; i++)
        {
            var field = layout.Fields[i];
            var shape = (field.WidthMm, field.HeightMm, field.IsRound);
            if (!shapes.TryGetValue(shape, out var known)) known = shapes[shape] = (FieldZones.Of(field, outlineMm), OutlinePoint.Along(field));
            (_zones[i], _outlines[i]) = known;
            _hidden[i] = Hidden(field);
        }
        // A field whose surroundings are covered takes its paper from the others: 1 before any is known, then their median.
        for (var i = 0; i < n; i++) _fields[i] = Darkness(i, 1);
        var usual = Median(_fields.Select(f => f.WhiteFraction), 1);
        for (var i = 0; i < n; i++) if (double.IsNaN(_fields[i].WhiteFraction)) _fields[i] = Darkness(i, usual);
        foreach (var shape in Enumerable.Range(0, n).GroupBy(i => _zones[i])) OutlineProfile.TakeAway(shape.Key, [.. shape.Select(i => _fields[i].Patch)], blurMm);
    }

    public static IReadOnlyList<MarkTraits> Of(SheetLayout layout, FormPlace place) => new TraitsReader(layout, place).All();

    private MarkTraits[] All()
    {
        var lines = Enumerable.Range(0, _fields.Length).Select(LineDarkness).ToArray();
        var outline = Median(lines.Where((_, i) => _place.IsAgreed[i]).Select(l => (double)l.Order().ElementAt(l.Length / 2)), double.NaN);
        if (double.IsNaN(outline)) outline = .5;
        var rims = Enumerable.Range(0, _fields.Length).Select(Rim).ToArray();
        var rim = Median(rims.Where((_, i) => _place.IsAgreed[i]).SelectMany(r => r), 1);
        var traits = new MarkTraits[_fields.Length];
        for (var i = 0; i < traits.Length; i++) traits[i] = One(i, lines[i], Math.Max(outline, .05), rims[i], Math.Max(rim, .02));
        return WithGroups(traits);
    }

    private MarkTraits One(int i, float[] line, double outline, double[] rim, double usualRim)
    {
        var (zones, patch) = (_zones[i], _fields[i].Patch);
        var ink = (float)Math.Max(LeastInkFraction, InkOfOutlineFraction * outline);
        var strokes = InkStrokes.Of(patch, zones, ink);
        var inside = new Shares(stackalloc int[Shares.StepCount]);
        var sum = 0.0;
        foreach (var pixel in zones.Inside)
        {
            sum += patch.Values[pixel];
            inside.Add(patch.Values[pixel]);
        }
        var count = Math.Max(1, zones.Inside.Length);
        return new(_layout.Fields[i].Key, (double)strokes.Count / count, sum / count, zones.Inside.Length == 0 ? 0 : inside.Below(.97), outline,
            line.Count(d => d > .5 * outline) / (double)line.Length, strokes.LongestMm, Steepest(patch, zones) / outline, strokes.SpreadMm,
            Around(i, ink, rim, usualRim), 1, _fields[i].GrainFraction, Math.Clamp(_fields[i].WhiteGrey / 255, 0, 1), _solidFraction, _place.PxPerMm, Nearest(i, ink));
    }

    // The change that 3 % of the inside exceed, across four pixels.
    private static double Steepest(FieldPatch patch, FieldZones zones)
    {
        var shares = new Shares(stackalloc int[Shares.StepCount]);
        var (values, inside, down) = (patch.Values, zones.IsInside, 2 * patch.Width);
        foreach (var pixel in zones.Inside)
        {
            if (!inside[pixel - 2] || !inside[pixel + 2] || !inside[pixel - down] || !inside[pixel + down]) continue;
            shares.Add(Math.Max(Math.Abs(values[pixel + 2] - values[pixel - 2]), Math.Abs(values[pixel + down] - values[pixel - down])));
        }
        var steepest = shares.Below(.97);
        return double.IsNaN(steepest) ? 0 : Math.Max(0, steepest);
    }

    // How far from the middle so much ink has been met that it is no speck of noise.
    private double Nearest(int i, float ink)
    {
        var (patch, field) = (_fields[i].Patch, _layout.Fields[i]);
        Span<int> counts = stackalloc int[NearestStepCount];
        var (middleX, middleY) = patch.Pixel(0, 0);
        foreach (var pixel in _zones[i].Inside)
        {
            if (patch.Values[pixel] <= ink) continue;
            var x = (pixel % patch.Width - middleX) / (field.WidthMm / 2 * FieldPatch.PxPerMm);
            var y = (pixel / patch.Width - middleY) / (field.HeightMm / 2 * FieldPatch.PxPerMm);
            var outward = field.IsRound ? double.Hypot(x, y) : Math.Max(Math.Abs(x), Math.Abs(y));
            counts[Math.Min(NearestStepCount - 1, (int)(outward * NearestStepCount))]++;
        }
        var met = 0;
        for (var step = 0; step < counts.Length; step++)
            if ((met += counts[step]) >= NearestLeastCount) return step / (double)NearestStepCount;
        return 1;
    }

    // A ring may lie beside the outline or on it, where it makes it darker than outlines of this page are.
    private double Around(int i, float ink, double[] rim, double usualRim)
    {
        Span<int> counts = stackalloc int[FieldZones.SectorCount];
        foreach (var (pixel, sector) in _zones[i].Around)
            if (!_hidden[i][pixel] && _fields[i].Patch.Values[pixel] > ink) counts[sector]++;
        var inked = 0;
        for (var sector = 0; sector < counts.Length; sector++) if (counts[sector] >= AroundLeastCount || rim[sector] > RingOfRimFraction * usualRim) inked++;
        return inked / (double)FieldZones.SectorCount;
    }

    // How dark the outline and what blur makes of it are in each direction.
    private double[] Rim(int i)
    {
        var (sums, counts) = (new double[FieldZones.SectorCount], new int[FieldZones.SectorCount]);
        foreach (var (pixel, sector) in _zones[i].Line)
        {
            sums[sector] += _fields[i].Patch.Values[pixel];
            counts[sector]++;
        }
        for (var sector = 0; sector < sums.Length; sector++) sums[sector] /= Math.Max(1, counts[sector]);
        return sums;
    }

    // The darkest across the line at each of its places.
    private float[] LineDarkness(int i)
    {
        var (patch, points) = (_fields[i].Patch, _outlines[i]);
        var line = new float[points.Length];
        for (var k = 0; k < line.Length; k++)
        {
            line[k] = float.MinValue;
            for (var step = -1; step <= 1; step++)
            {
                var p = points[k];
                var (x, y) = patch.Pixel(p.XMm + step * p.OutX / FieldPatch.PxPerMm, p.YMm + step * p.OutY / FieldPatch.PxPerMm);
                line[k] = Math.Max(line[k], patch.Values[(int)Math.Round(y) * patch.Width + (int)Math.Round(x)]);
            }
        }
        return line;
    }

    private FieldDarkness Darkness(int i, double usualWhiteFraction)
    {
        var field = _layout.Fields[i];
        if (_place.IsAgreed[i])
        {
            var own = _place.Outlines[i];
            field = field with { XMm = field.XMm + OwnShiftFraction * own.DxMm, YMm = field.YMm + OwnShiftFraction * own.DyMm };
        }
        return FieldDarkness.Of(_place, field, _zones[i], _hidden[i], usualWhiteFraction, _solidFraction);
    }

    // What belongs to a neighbour says nothing about this field.
    private bool[] Hidden(MarkField field)
    {
        var (width, height) = (FieldPatch.Side(field.WidthMm + 2 * FieldZones.MarginMm), FieldPatch.Side(field.HeightMm + 2 * FieldZones.MarginMm));
        var hidden = new bool[width * height];
        var (xMm, yMm) = (field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm / 2);
        foreach (var other in _layout.Fields)
        {
            if (ReferenceEquals(other, field)) continue;
            var left = Pixel(other.XMm - NeighbourMm - xMm, width);
            var right = Pixel(other.XMm + other.WidthMm + NeighbourMm - xMm, width);
            var top = Pixel(other.YMm - NeighbourMm - yMm, height);
            var bottom = Pixel(other.YMm + other.HeightMm + NeighbourMm - yMm, height);
            if (right <= 0 || bottom <= 0 || left >= width || top >= height) continue;
            for (var y = Math.Max(0, top); y < Math.Min(height, bottom); y++)
                hidden.AsSpan(y * width + Math.Max(0, left), Math.Min(width, right) - Math.Max(0, left)).Fill(true);
        }
        return hidden;
    }

    private static int Pixel(double fromMiddleMm, int side) => (int)Math.Round(fromMiddleMm * FieldPatch.PxPerMm + (side - 1) / 2.0);

    private static MarkTraits[] WithGroups(MarkTraits[] traits, IReadOnlyList<MarkField> fields)
    {
        foreach (var group in Enumerable.Range(0, traits.Length).Where(i => fields[i].Group.Length > 0).GroupBy(i => fields[i].Group))
        {
            foreach (var i in group)
            {
                // A little ink is lent to both, so that two empty fields are the same.
                var most = group.Where(j => j != i).Select(j => Ink(traits[j])).DefaultIfEmpty(0).Max();
                traits[i] = traits[i] with { GroupFraction = group.Count() == 1 ? 1 : (Ink(traits[i]) + .01) / (Ink(traits[i]) + most + .02) };
            }
        }
        return traits;
    }

    private MarkTraits[] WithGroups(MarkTraits[] traits) => WithGroups(traits, _layout.Fields);

    private static double Ink(MarkTraits traits) => traits.InkFraction * Math.Max(0, traits.UpperDarknessFraction);

    private static double Median(IEnumerable<double> values, double otherwise)
    {
        var known = values.Where(double.IsFinite).Order().ToArray();
        return known.Length == 0 ? otherwise : known[known.Length / 2];
    }
}
