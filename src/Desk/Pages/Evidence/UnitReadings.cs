using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.Foresight;
using Slantwise.Records.Lessons;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>A class's lessons with what they say, each part computed when a page first asks for it.</summary>
/// <param name="classId">The class.</param>
/// <param name="records">Its lessons that have a frozen sheet, earliest first.</param>
public sealed class UnitReadings(Guid classId, IReadOnlyList<LessonRecord> records)
{
    private readonly Lazy<EvidenceView> _view = new(() => EvidenceView.Of(classId, records));
    private readonly Lazy<ClassChances> _chances = new(() => ClassChances.Of(records, [], []));
    private readonly Lazy<ClassForesight> _foresight = new(() => ClassForesight.Of(records));

    /// <summary>The lessons, earliest first.</summary>
    public IReadOnlyList<LessonRecord> Records => records;

    /// <summary>The evidence of all of them.</summary>
    public EvidenceView View => _view.Value;

    /// <summary>Each pupil's chance at each level, from all of them.</summary>
    public ClassChances Chances => _chances.Value;

    /// <summary>What the class's predictions are worth.</summary>
    public ClassForesight Foresight => _foresight.Value;

    /// <summary>Loads a class.</summary>
    /// <param name="desk">The school, loaded.</param>
    /// <param name="classId">The class.</param>
    public static async Task<UnitReadings> LoadAsync(DeskSchool desk, Guid classId) =>
        new(classId, await EvidenceView.LoadUnitAsync(desk, classId));
}
