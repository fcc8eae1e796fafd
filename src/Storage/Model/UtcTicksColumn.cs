using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Slantwise.Storage.Model;

/// <summary>An instant as UTC ticks: both databases sort and keep it exactly, which their own time types do not.</summary>
internal sealed class UtcTicksColumn() : ValueConverter<DateTimeOffset, long>(
    instant => instant.UtcTicks, ticks => new DateTimeOffset(ticks, TimeSpan.Zero));
