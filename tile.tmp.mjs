import sharp from "sharp";
const [,, out, w, ...files]=process.argv; const W=+w, cols=2;
const cells=await Promise.all(files.map(f=>sharp(f).resize({width:W,height:Math.round(W*0.78),fit:"contain",background:"#cdf"}).toBuffer()));
const H=Math.round(W*0.78);
await sharp({create:{width:W*cols,height:H*Math.ceil(cells.length/cols),channels:3,background:"#cdf"}}).composite(cells.map((input,i)=>({input,left:(i%cols)*W,top:Math.floor(i/cols)*H}))).png().toFile(out);
