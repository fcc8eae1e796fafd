using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Slantwise.Storage.Model;

/// <summary>A list or a sheet's content as one text column.</summary>
internal sealed class JsonColumn<T>() : ValueConverter<T, string>(value => JsonText.Write(value), text => JsonText.Read<T>(text));
