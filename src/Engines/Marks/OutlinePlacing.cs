namespace Slantwise.Engines.Marks;

/// <summary>Lays the map on the printed outlines of the fields: first some of them from farther away, then all.</summary>
/// <remarks>
/// What a single outline says is not believed: a surface bent smoothly through all of them is, and outlines that disagree with it count ever less. So a
/// mark over an outline moves nothing.
/// </remarks>
internal static class OutlinePlacing
{
    /// <summary>How far a patch reaches beyond the places that are looked at.</summary>
    public const double PatchMarginMm = 1;

    private const int FirstCount = 48;
    private const double FarMm = 2;
    private const double NearMm = .8;
    private const double SpreadMm = .15;
    private const double ToleratedMm = .25;
    private const double AgreedMm = .35;
    private const double LeastRidgeFraction = .025;

    /// <summary>The place with a map bent to the outlines, and what each says.</summary>
    public static FormPlace Of(SheetLayout layout, FormPlace place)
    {
        if (layout.Fields.Count == 0) return place;
        var points = new Dictionary<(double, double, bool), OutlinePoint[]>();
        OutlinePoint[] Points(MarkField f) =>
            points.TryGetValue((f.WidthMm, f.HeightMm, f.IsRound), out var known) ? known : points[(f.WidthMm, f.HeightMm, f.IsRound)] = OutlinePoint.Along(f);
        OutlineSight See(FormMap map, MarkField field, double reachMm)
        {
            var patch = FieldPatch.Of(place.Level, map, field, reachMm + PatchMarginMm);
            var middle = map.At(field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm / 2);
            return OutlineSearch.Of(patch, Points(field), reachMm, place.White.At(middle.XPx, middle.YPx));
        }

        var every = (layout.Fields.Count + FirstCount - 1) / FirstCount;
        MarkField[] some = [.. layout.Fields.Where((_, i) => i % every == 0)];
        var map = place.Map;
        for (var round = 0; round < 2; round++) map = Bent(layout, place, map, some, [.. some.Select(f => See(map, f, FarMm))]);
        OutlineSight[] sights = [.. layout.Fields.Select(f => See(map, f, NearMm))];
        var last = Bent(layout, place, map, layout.Fields, sights);
        return Judged(layout, place with { Map = last }, map, sights);
    }

    private static FormMap Bent(SheetLayout layout, FormPlace place, FormMap map, IReadOnlyList<MarkField> fields, OutlineSight[] sights)
    {
        if (map.Flat.Back() is not { } back) return map;
        var shifts = new List<PlaceShift>();
        foreach (var sight in place.Anchors)
        {
            var there = back.At(sight.Middle.XPx, sight.Middle.YPx);
            shifts.Add(new(sight.Anchor.XMm, sight.Anchor.YMm, there.XPx - sight.Anchor.XMm, there.YPx - sight.Anchor.YMm, SpreadMm));
        }
        for (var i = 0; i < sights.Length; i++)
        {
            if (!IsClear(sights[i])) continue;
            var (x, y) = Middle(fields[i]);
            var (dx, dy) = map.BendAt(x, y);
            shifts.Add(new(x, y, dx + sights[i].DxMm, dy + sights[i].DyMm, SpreadMm));
        }
        return new(map.Flat, BendingSurface.Of(layout.WidthMm, layout.HeightMm, shifts, ToleratedMm));
    }

    // The sights were taken against the map before; what the new one moved is no longer theirs.
    private static FormPlace Judged(SheetLayout layout, FormPlace place, FormMap before, OutlineSight[] sights)
    {
        var ridges = sights.Select(s => s.RidgeFraction).Order().ToArray();
        var usual = ridges[ridges.Length / 2];
        var (own, agreed) = (new OutlineSight[sights.Length], new bool[sights.Length]);
        for (var i = 0; i < sights.Length; i++)
        {
            var (x, y) = Middle(layout.Fields[i]);
            var (was, now) = (before.BendAt(x, y), place.Map.BendAt(x, y));
            own[i] = sights[i] with { DxMm = sights[i].DxMm + was.DxMm - now.DxMm, DyMm = sights[i].DyMm + was.DyMm - now.DyMm };
            agreed[i] = IsClear(sights[i]) && sights[i].RidgeFraction > .4 * usual && double.Hypot(own[i].DxMm, own[i].DyMm) < AgreedMm;
        }
        return place with { Outlines = own, IsAgreed = agreed };
    }

    private static bool IsClear(OutlineSight sight) => sight.RidgeFraction > LeastRidgeFraction && sight.LeadFraction > .15 * sight.RidgeFraction;

    private static (double XMm, double YMm) Middle(MarkField field) => (field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm / 2);
}
