// Gives a live page another address without loading it; the way past the navigation goes along.
export function showAddress(address) {
  history.replaceState(null, "", address);
  const skip = document.querySelector(".skip");
  if (skip) skip.href = address + "#page";
}
